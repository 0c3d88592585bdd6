package trueseam.records.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Passwords are kept as Argon2id. */
class PasswordsTest {

    /** The reference implementation's own test (phc-winner-argon2, src/test.c: Argon2id, version 19, t=2, m=2^16, p=1), from memory. */
    private static final String OF_THE_REFERENCE =
            "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";

    @Test
    void whatTheReferenceImplementationWroteFits() {
        assertThat(Passwords.fits("password", OF_THE_REFERENCE)).isTrue();
        assertThat(Passwords.fits("Password", OF_THE_REFERENCE)).isFalse();
    }

    @Test
    void aPasswordFitsWhatWasKeptOfItAndNoOtherDoes() {
        String kept = Passwords.kept("four words make sense");
        // RFC 9106, section 4, second recommended option.
        assertThat(kept).startsWith("$argon2id$v=19$m=65536,t=3,p=4$").doesNotContain("four");
        assertThat(Passwords.fits("four words make sense", kept)).isTrue();
        assertThat(Passwords.fits("four words make sens", kept)).isFalse();
        assertThat(Passwords.kept("four words make sense")).isNotEqualTo(kept);
    }

    @Test
    void whatIsNotArgon2idIsNotTakenForAPassword() {
        assertThatThrownBy(() -> Passwords.fits("x", "x")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void statementsAboutOwnedRowsAreRefusedPastTheOwner() {
        for (String sql : new String[] {
            "select * from person",
            "select account.* from account join project on project.owner_id = account.id",
            "update reading set mm = 1",
            "delete from taught_class",
            "insert into access (id) values (1)",
            "select * from account, person",
            "select 1"
        }) {
            assertThatThrownBy(() -> StudioRows.allowed(sql)).as(sql).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(StudioRows.allowed("select * from account where id = :id")).isNotEmpty();
    }
}
