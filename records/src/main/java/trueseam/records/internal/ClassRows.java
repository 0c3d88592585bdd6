package trueseam.records.internal;

import java.util.List;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.group.Classes;
import trueseam.records.group.TaughtClass;

/** Classes as rows of the teacher who leads them. */
public final class ClassRows implements Classes {

    private static final int LONGEST_NAME = 80;

    private final Rows rows;

    /**
     * Classes as rows.
     *
     * @param rows the teacher's rows
     */
    public ClassRows(Rows rows) {
        this.rows = rows;
    }

    private record Line(String id, String name) {}

    @Override
    public List<TaughtClass> list() {
        List<Line> lines = rows.all(
                "select * from taught_class where owner_id = :owner order by name, id",
                Bound.none(),
                (row, context) -> new Line(row.getString("id"), row.getString("name")));
        return lines.stream()
                .map(line -> new TaughtClass(line.id(), line.name(), students(line.id())))
                .toList();
    }

    private List<Account> students(String id) {
        return rows.all(
                "select account.* from class_member join account on account.id = class_member.account_id"
                        + " where class_member.owner_id = :owner and class_member.class_id = :id"
                        + " order by account.name, account.id",
                Bound.id(id),
                (row, context) -> AccountRows.account(row));
    }

    @Override
    public String begin(String name) {
        String called = name.strip();
        if (called.isEmpty() || called.length() > LONGEST_NAME) {
            throw AccountException.refused("The name of a class has 1 to 80 characters.");
        }
        String id = Rows.fresh();
        rows.put(
                "insert into taught_class (id, owner_id, name, created_at) values (:id, :owner, :name, :now)",
                Bound.id(id).text("name", called).whole("now", rows.now()));
        return id;
    }

    @Override
    public boolean add(String id, long student) {
        return rows.put(
                        "insert into class_member (owner_id, class_id, account_id)"
                                + " select taught_class.owner_id, taught_class.id, account.id from taught_class, account"
                                + " where taught_class.owner_id = :owner and taught_class.id = :id"
                                + " and account.id = :student and account.role = 'student'"
                                + " and not exists (select 1 from class_member member"
                                + " where member.class_id = taught_class.id and member.account_id = account.id)",
                        Bound.id(id).whole("student", student))
                == 1;
    }

    @Override
    public boolean remove(String id, long student) {
        return rows.put(
                        "delete from class_member where owner_id = :owner and class_id = :id and account_id = :student",
                        Bound.id(id).whole("student", student))
                == 1;
    }

    @Override
    public boolean end(String id) {
        return rows.put("delete from taught_class where owner_id = :owner and id = :id", Bound.id(id)) == 1;
    }
}
