package trueseam.intake.patternfile;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.pattern.EdgeRole;

/** The role that an edge's name tells: {@code centre front} is a centre. */
public final class RoleOfName {

    /** Words that mean a role besides its own. Common practice. */
    private static final Map<String, EdgeRole> OTHER_WORDS =
            Map.of("center", EdgeRole.CENTRE, "outseam", EdgeRole.SIDE, "rise", EdgeRole.CROTCH);

    private RoleOfName() {}

    /**
     * The role.
     *
     * @param edgeName what the edge is called
     * @return the role that is the first word of it to be one; nothing if none is
     */
    public static Optional<EdgeRole> of(String edgeName) {
        for (String word : List.of(edgeName.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))) {
            Optional<EdgeRole> role = EdgeRole.ofWord(word).or(() -> Optional.ofNullable(OTHER_WORDS.get(word)));
            if (role.isPresent()) {
                return role;
            }
        }
        return Optional.empty();
    }
}
