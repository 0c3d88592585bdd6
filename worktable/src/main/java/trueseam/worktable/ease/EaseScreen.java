package trueseam.worktable.ease;

import trueseam.worktable.page.QuestionRow;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;

/** Shows where the garment will be tight, and whose least ease says so. Amounts are changed on the chart. */
public final class EaseScreen implements Screen {

    /** For the server. */
    public EaseScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("ease", visit -> visit.show(Step.EASE, EaseView.of(visit.workings(), visit.asked("part"))));
        routes.act("ease/choose", visit -> {
            QuestionRow.keep(visit);
            visit.show(Step.EASE, EaseView.of(visit.workings(), ""));
        });
    }
}
