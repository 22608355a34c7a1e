/** Readings of the last bakes as small rolls over the hours; nothing is drawn between readings but a line. */
import { dayText } from '../../figures/format.ts';
import { useWidth } from '../../hooks/use-width.ts';
import { say } from '../../words/say.ts';
import { type MeterPoint, type MeterSeries, type MeterUnit, meterFigure } from './meter-series.ts';

/** Width before it is measured, and the widest it is drawn, px. */
const WIDE = 400;
const WIDEST = 544;
const HIGH = 250;
const TOP = 34;
const FLOOR = 206;
const LEFT = 34;
/** Bakes in one picture; more would hide each other. Own choice. */
export const MOST_DRAWN = 4;

export interface Band {
  low: number;
  high: number;
}

interface Scale {
  x(hours: number): number;
  y(value: number): number;
}

function scaleOf(series: readonly MeterSeries[], band: Band | null, wide: number): Scale {
  const values = series.flatMap(({ points }) => points.map(({ value }) => value));
  if (band) values.push(band.low, band.high);
  const low = Math.min(...values);
  const span = Math.max(...values) - low || 1;
  return {
    x: (hours) => LEFT + (hours / 2) * (wide - 2 * LEFT),
    y: (value) => FLOOR - ((value - low) / span) * (FLOOR - TOP),
  };
}

const ROLL = 'M-9 5Q-11 5 -11 1Q-11 -7 -4 -7H4Q11 -7 11 1Q11 5 9 5Z';

function Series({
  one,
  scale,
  unit,
  latest,
}: {
  one: MeterSeries;
  scale: Scale;
  unit: MeterUnit;
  latest: boolean;
}) {
  const at = (point: MeterPoint) => `${scale.x(point.hours)} ${scale.y(point.value)}`;
  return (
    <g class={latest ? 'meter-latest' : 'meter-earlier'}>
      <path class="meter-line" d={`M${one.points.map(at).join('L')}`} />
      {one.points.map((point) => (
        <g key={point.hours}>
          <path class="meter-roll" d={ROLL} transform={`translate(${at(point)})`} />
          <text x={scale.x(point.hours)} y={scale.y(point.value) + (latest ? 22 : -12)}>
            {meterFigure(point.value, unit)}
          </text>
        </g>
      ))}
    </g>
  );
}

interface Props {
  /** Latest first. */
  series: readonly MeterSeries[];
  unit: MeterUnit;
  band: Band | null;
}

export function MeterPicture({ series, unit, band }: Props) {
  const shown = series.slice(0, MOST_DRAWN);
  const { ref, width } = useWidth(WIDE);
  // Drawn for the width at hand, so that its words keep their size.
  const wide = Math.min(width, WIDEST);
  const scale = scaleOf(shown, band, wide);
  return (
    <div ref={ref}>
      <svg
        class="meter"
        width={wide}
        height={HIGH}
        role="img"
        aria-label={say('meterPicture', shown.map(({ day }) => dayText(day)).join(', '))}
        viewBox={`0 0 ${wide} ${HIGH}`}
      >
        {band && (
          <rect
            class="meter-band"
            x="0"
            width={wide}
            y={scale.y(band.high)}
            height={Math.max(2, scale.y(band.low) - scale.y(band.high))}
            rx="8"
          />
        )}
        {[...shown].reverse().map((one) => (
          <Series key={one.id} one={one} scale={scale} unit={unit} latest={one === shown[0]} />
        ))}
        {([0, 1, 2] as const).map((hours) => (
          <text key={hours} class="meter-hour" x={scale.x(hours)} y={HIGH - 8}>
            {say((['meterBefore', 'meterHour1', 'meterHour2'] as const)[hours])}
          </text>
        ))}
      </svg>
    </div>
  );
}
