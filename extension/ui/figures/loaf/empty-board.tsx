/** The board with nothing on it yet: a few crumbs and the knife laid down. */
import { Board, Knife } from './loaf-parts.tsx';

/** Each crumb's middle and size, px. */
const CRUMBS: readonly (readonly [x: number, y: number, size: number])[] = [
  [46, 33, 2],
  [57, 31.5, 4],
  [76, 32.5, 3],
  [88, 31, 4.5],
  [109, 33, 2],
];

export function EmptyBoard() {
  return (
    <svg class="loaf empty-board" width="400" height="44" viewBox="0 0 400 44" aria-hidden="true">
      {CRUMBS.map(([x, y, size]) => (
        <ellipse key={x} class="flat-crust" cx={x} cy={y} rx={size} ry={size * 0.8} />
      ))}
      <g transform="translate(330 27) rotate(90)">
        <Knife at={4.5} floor={170} />
      </g>
      <Board wide={400} at={37.5} />
    </svg>
  );
}
