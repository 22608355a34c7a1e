import { useId, useMemo, useState } from 'preact/hooks';
import { frontierOf, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, FrontierPoint } from '../../../engine/model.ts';
import { amount, short } from './format.ts';

const WIDE = 560;
const HIGH = 220;
const EDGE = { left: 48, right: 16, top: 14, bottom: 40 };

interface Scale {
  x(netCarbsG: number): number;
  y(closeness: number): number;
  ticks: number[];
  lowest: number;
}

function scaleOf(points: readonly FrontierPoint[], budgetG: number): Scale {
  const most = Math.max(...points.map((point) => point.netCarbsG), budgetG, 1);
  const step = [1, 2, 5, 10, 20, 50, 100].find((size) => most / size <= 7) ?? 200;
  const full = Math.ceil(most / step) * step;
  const lowest = Math.min(0.9, Math.floor(10 * Math.min(...points.map((p) => p.closeness))) / 10);
  return {
    x: (netCarbsG) => EDGE.left + (netCarbsG / full) * (WIDE - EDGE.left - EDGE.right),
    y: (closeness) => EDGE.top + ((1 - closeness) / (1 - lowest)) * (HIGH - EDGE.top - EDGE.bottom),
    ticks: Array.from({ length: Math.round(full / step) + 1 }, (_, at) => at * step),
    lowest,
  };
}

const percent = (closeness: number): string => `${Math.round(closeness * 100)}%`;

interface Props {
  adaptation: Adaptation;
  /** What the adaptation was made with. */
  options: WalkOptions;
  onBudget(budgetG: number): void;
}

function Axes({ scale, budgetG }: { scale: Scale; budgetG: number }) {
  const floor = HIGH - EDGE.bottom;
  return (
    <g class="chart-axes">
      <line x1={EDGE.left} x2={WIDE - EDGE.right} y1={floor} y2={floor} />
      {scale.ticks.map((tick) => (
        <text key={tick} x={scale.x(tick)} y={floor + 16} text-anchor="middle">
          {tick}
        </text>
      ))}
      <text x={(WIDE + EDGE.left) / 2} y={HIGH - 6} text-anchor="middle">
        net carbs a serving, g
      </text>
      {[1, (1 + scale.lowest) / 2, scale.lowest].map((tick) => (
        <text key={tick} x={EDGE.left - 6} y={scale.y(tick) + 4} text-anchor="end">
          {percent(tick)}
        </text>
      ))}
      <line
        class="chart-budget"
        x1={scale.x(budgetG)}
        x2={scale.x(budgetG)}
        y1={EDGE.top - 6}
        y2={floor}
      />
    </g>
  );
}

/** How far the dish must move away from the original for fewer net carbs; worked out once it is opened. */
export function Frontier(props: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details class="frontier" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Fewer carbs or closer to the original</summary>
      {open && <Curve {...props} />}
    </details>
  );
}

function Curve({ adaptation, options, onBudget }: Props) {
  const id = useId();
  const { plan, goals } = adaptation;
  const points = useMemo(() => frontierOf(adaptation, options), [adaptation, options]);
  if (points.length < 2) return null;
  const scale = scaleOf(points, goals.budgetG);
  const path = points.map((p) => `${scale.x(p.netCarbsG)},${scale.y(p.closeness)}`).join(' ');
  const here = adaptation.after.perServing.netCarbsG?.best ?? null;
  return (
    <>
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} role="img" aria-labelledby={`${id}-text`}>
        <title id={`${id}-text`}>
          From {amount(points[0]?.netCarbsG ?? 0)} g at {percent(points[0]?.closeness ?? 0)} of the
          original to {amount(points.at(-1)?.netCarbsG ?? 0)} g at{' '}
          {percent(points.at(-1)?.closeness ?? 0)}.
        </title>
        <Axes scale={scale} budgetG={goals.budgetG} />
        <polyline class="chart-line" points={path} />
        {points.map((p) => (
          <circle
            key={`${p.netCarbsG}`}
            class="chart-point"
            cx={scale.x(p.netCarbsG)}
            cy={scale.y(p.closeness)}
            r="4"
          />
        ))}
        {here !== null && (
          <circle class="chart-here" cx={scale.x(here)} cy={scale.y(plan.closeness)} r="7" />
        )}
      </svg>
      <div class="field">
        <label for={`${id}-pick`}>Take a point as the budget</label>
        <select
          id={`${id}-pick`}
          value=""
          onChange={(event) => {
            const picked = Number(event.currentTarget.value);
            if (event.currentTarget.value !== '') onBudget(picked);
          }}
        >
          <option value="">
            now {short(goals.budgetG)} g, {percent(plan.closeness)} of the original
          </option>
          {points.map((p) => (
            <option key={`${p.netCarbsG}`} value={String(Math.ceil(p.netCarbsG * 10) / 10)}>
              {amount(p.netCarbsG)} g, {percent(p.closeness)} of the original
            </option>
          ))}
        </select>
      </div>
    </>
  );
}
