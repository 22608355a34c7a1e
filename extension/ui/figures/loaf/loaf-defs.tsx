/** Gradient and patterns that every loaf of a page refers to; drawn once, seen by nobody. */

function Pattern({ id, ink }: { id: string; ink: string }) {
  const fill = { fill: ink };
  return (
    <>
      <pattern id={`${id}-sugar`} width="9" height="9" patternUnits="userSpaceOnUse">
        <path d="M1.2 2.2h2.2v2.2H1.2zM5.8 6.4H8v2.2H5.8z" style={fill} />
      </pattern>
      <pattern id={`${id}-plant`} width="12" height="10" patternUnits="userSpaceOnUse">
        <path d="M2 6q2-5 5-4q-1 4-5 4z" style={fill} />
      </pattern>
      <pattern id={`${id}-rest`} width="8" height="9" patternUnits="userSpaceOnUse">
        <path
          d="M1.5 1.5L3.5 4M5.5 6L7.5 8.5"
          style={{ stroke: ink, strokeWidth: 1.5, strokeLinecap: 'round' }}
        />
      </pattern>
    </>
  );
}

export function LoafDefs() {
  return (
    <svg class="loaf-defs" width="0" height="0" aria-hidden="true">
      <defs>
        <linearGradient id="crust" x1="0" y1="0" x2="0" y2="1">
          <stop offset="0" style={{ stopColor: 'var(--crust-deep)' }} />
          <stop offset=".45" style={{ stopColor: 'var(--crust)' }} />
          <stop offset="1" style={{ stopColor: 'var(--crust)' }} />
        </linearGradient>
        <Pattern id="baked" ink="var(--pattern)" />
        <Pattern id="dough" ink="var(--dough-line)" />
      </defs>
    </svg>
  );
}
