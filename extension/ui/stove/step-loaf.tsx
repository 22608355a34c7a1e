/** The steps as slices of a loaf: done are dotted, the one in hand turns its face. */

const WIDE = 78;
const HIGH = 84;
const FLOOR = 96;

/** The rounded end of the loaf, left or right. */
function heelPath(at: number, right: boolean): string {
  const from = at * WIDE;
  const top = FLOOR - HIGH + 8;
  return right
    ? `M${from + 1} ${FLOOR}V${top}C${from + 46} ${top + 2} ${from + 74} ${top + 22} ${from + 74} ${FLOOR - 32}C${from + 74} ${FLOOR - 8} ${from + 66} ${FLOOR} ${from + 52} ${FLOOR}Z`
    : `M${from + WIDE - 1} ${FLOOR}V${top}C${from + 32} ${top + 2} ${from + 4} ${top + 22} ${from + 4} ${FLOOR - 32}C${from + 4} ${FLOOR - 8} ${from + 12} ${FLOOR} ${from + 26} ${FLOOR}Z`;
}

/** Outline of one slice's side: heels at both ends, straight cuts between. */
function sidePath(at: number, count: number): string {
  if (count > 1 && at === 0) return heelPath(at, false);
  if (count > 1 && at === count - 1) return heelPath(at, true);
  const from = at * WIDE;
  return `M${from + 1} ${FLOOR}V${FLOOR - HIGH + 8}H${from + WIDE - 1}V${FLOOR}Z`;
}

function Face({ at, numbered }: { at: number; numbered: boolean }) {
  const x = at * WIDE;
  const outline = `M${x + 8} ${FLOOR - 8}V46C${x - 2} 40 ${x} 14 ${x + 24} 12H${x + 54}C${x + 78} 14 ${x + 80} 40 ${x + 70} 46V${FLOOR - 8}Q${x + 70} ${FLOOR} ${x + 62} ${FLOOR}H${x + 16}Q${x + 8} ${FLOOR} ${x + 8} ${FLOOR - 8}Z`;
  return (
    <>
      <path class="slice-crust" d={outline} />
      <path
        class="slice-crumb"
        d={outline}
        transform={`translate(${(x + 39) * 0.14} ${FLOOR * 0.1 - 2}) scale(0.86 0.9)`}
      />
      {numbered && (
        <text class="slice-number" x={x + 39} y={66}>
          {at + 1}
        </text>
      )}
    </>
  );
}

function score(at: number): string {
  const x = at * WIDE + 20;
  return `M${x} ${FLOOR - 28}q6 -28 36 -38q-6 28 -36 38Z`;
}

/** More slices than this are too thin to be told apart, or for a number on one. Own choice. */
const MOST_SLICES = 24;
const MOST_NUMBERED = 7;

export function StepLoaf({ at, count }: { at: number; count: number }) {
  if (count < 2 || count > MOST_SLICES) return null;
  const slices = Array.from({ length: count }, (_, n) => n);
  return (
    <svg class="step-loaf" viewBox={`0 0 ${count * WIDE} ${FLOOR + 2}`} aria-hidden="true">
      {slices.map((n) => {
        if (n === at) return <Face key={n} at={n} numbered={count <= MOST_NUMBERED} />;
        return (
          <g key={n} class={n < at ? 'slice-done' : 'slice-to-come'}>
            <path d={sidePath(n, count)} />
            {n > at && <path class="slice-score" d={score(n)} />}
          </g>
        );
      })}
    </svg>
  );
}
