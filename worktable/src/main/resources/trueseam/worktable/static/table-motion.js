// Movement over time, for steps and walks. Who asked the machine for less motion sees the ends and nothing between.

export const still = () => window.matchMedia("(prefers-reduced-motion: reduce)").matches;

/** Runs from 0 to 1, or back, and then says so; the answer stops it. */
export function run(milliseconds, backwards, frame, done) {
  let stopped = false;
  if (still()) {
    frame(backwards ? 0 : 1);
    const timer = setTimeout(() => { if (!stopped) done(); }, 0);
    return () => { stopped = true; clearTimeout(timer); };
  }
  let begun = 0;
  const each = now => {
    if (stopped) return;
    begun = begun || now;
    const share = Math.min(1, (now - begun) / milliseconds);
    frame(backwards ? 1 - share : share);
    if (share < 1) requestAnimationFrame(each);
    else done();
  };
  requestAnimationFrame(each);
  return () => { stopped = true; };
}

/** A hand sets out slowly and comes to rest slowly. */
export const hand = t => t * t * (3 - 2 * t);

export async function fetched(what, fields) {
  const answer = await fetch(`/p/${document.getElementById("bar").dataset.project}/${what}?${new URLSearchParams(fields)}`);
  if (!answer.ok) throw new Error(await answer.text());
  return answer.json();
}
