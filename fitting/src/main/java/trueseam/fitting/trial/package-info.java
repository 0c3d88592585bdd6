/**
 * The trial garment: what its folds say, which cause that has, and how what is pinned becomes the next change of the pattern.
 *
 * <p>{@link trueseam.fitting.trial.TrialFolds} holds every symptom, cause and telling question, read from tables beside it.
 * {@link trueseam.fitting.trial.GuidedReading} narrows them by answers: where the folds are, which way they point, slack or strain, what
 * pinning and pulling does. {@link trueseam.fitting.trial.Pinned} turns a pinned amount into an alteration's amount, and
 * {@link trueseam.fitting.trial.NextFit} lays it on top of what was altered before.
 *
 * <p>Lengths are mm. Nothing here looks at a picture or judges a fold: the dressmaker sees and answers, the tables rank and say why.
 */
package trueseam.fitting.trial;
