/**
 * Other sizes of pieces by rules: how far each ruled point moves from the sample size, and the points between with it. Rules come from
 * {@link trueseam.intake.dxf.RuleTable}, pieces from {@link trueseam.intake.apparel.ApparelPieces}.
 */
package trueseam.intake.grade;
