package trueseam.intake.patternfile;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.pattern.EdgeRole;

/** The role that an edge's name tells: {@code centre front} is a centre. */
final class RoleOfName {

    /** Words that mean a role besides its own. Common practice. */
    private static final Map<String, EdgeRole> OTHER_WORDS =
            Map.of("center", EdgeRole.CENTRE, "outseam", EdgeRole.SIDE, "rise", EdgeRole.CROTCH);

    private RoleOfName() {}

    static Optional<EdgeRole> of(String edgeName) {
        for (String word : List.of(edgeName.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))) {
            Optional<EdgeRole> role = EdgeRole.ofWord(word).or(() -> Optional.ofNullable(OTHER_WORDS.get(word)));
            if (role.isPresent()) {
                return role;
            }
        }
        return Optional.empty();
    }
}
