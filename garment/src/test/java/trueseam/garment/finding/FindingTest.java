package trueseam.garment.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class FindingTest {

    @Test
    void aFindingSaysWhereAndWhat() {
        assertThatThrownBy(() -> Finding.note(" ", "The notch is missing."))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("The notch is missing.");
        assertThatThrownBy(() -> Finding.failure("sleeve, cap", ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sleeve, cap");
    }

    @Test
    void aFindingCanBePlacedMoreClosely() {
        assertThat(Finding.warning("ann.csv", "Too far apart.").at("ann.csv, line 3"))
                .isEqualTo(new Finding(Severity.WARNING, "ann.csv, line 3", "Too far apart."));
    }

    @Test
    void severitiesStandInOrder() {
        assertThat(Severity.values()).containsExactly(Severity.NOTE, Severity.WARNING, Severity.FAILURE);
    }
}
