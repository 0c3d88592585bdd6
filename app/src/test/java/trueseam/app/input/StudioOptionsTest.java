package trueseam.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import trueseam.worktable.studio.Reach;

/** Who is let in from other machines, and only when it was said. */
class StudioOptionsTest {

    private static StudioOptions given(String... words) {
        return CommandLine.populateCommand(new StudioOptions(), words);
    }

    @Test
    void withoutAStudioNobodyElseIsLetIn() {
        assertThat(given().reach()).isEmpty();
        assertThat(given().givesOwnerLink(false)).isFalse();
        for (String[] alone : new String[][] {
            {"--host", "0.0.0.0"},
            {"--behind-tls", "studio.example.org"},
            {"--plain-in-own-network", "studio.lan:7431"},
            {"--owner-link"}
        }) {
            assertThatThrownBy(() -> given(alone).reach())
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("--studio only");
        }
    }

    @Test
    void aStudioListensForOtherMachinesOnlyWithTlsBeforeItOrWhenDoingWithoutWasSaid() {
        assertThat(given("--studio").reach()).contains(Reach.thisMachine());
        assertThatThrownBy(() -> given("--studio", "--host", "0.0.0.0").reach())
                .isInstanceOf(InputException.class)
                .hasMessageContaining("--behind-tls NAME");
        assertThat(given("--studio", "--behind-tls", "studio.example.org").reach())
                .hasValueSatisfying(reach -> {
                    assertThat(reach.bind()).isEqualTo("127.0.0.1");
                    assertThat(reach.address(7431)).isEqualTo("https://studio.example.org/");
                });
        assertThat(given("--studio", "--host", "0.0.0.0", "--plain-in-own-network", "studio.lan:7431")
                        .reach())
                .hasValueSatisfying(reach -> {
                    assertThat(reach.tls()).isFalse();
                    assertThat(reach.origin("studio.lan:7431", 7431)).contains("http://studio.lan:7431");
                });
    }

    @Test
    void whatIsNoNameOfAMachineAndBothWaysAtOnceAreRefused() {
        assertThatThrownBy(() -> given("--studio", "--behind-tls", "https://studio.example.org")
                        .reach())
                .hasMessageContaining("without https");
        assertThatThrownBy(() -> given("--studio", "--behind-tls", "a.example", "--plain-in-own-network", "b.example")
                        .reach())
                .hasMessageContaining("one of them");
    }

    @Test
    void theOwnersLinkIsGivenAtTheFirstStartAndWhenAskedFor() {
        assertThat(given("--studio").givesOwnerLink(false)).isTrue();
        assertThat(given("--studio").givesOwnerLink(true)).isFalse();
        assertThat(given("--studio", "--owner-link").givesOwnerLink(true)).isTrue();
    }
}
