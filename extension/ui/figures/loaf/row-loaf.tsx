/** A loaf for a row of a list: the baked one in front of its dough, all rows on one scale. */
import { useId } from 'preact/hooks';
import { say } from '../../words/say.ts';
import { short } from '../format.ts';
import { Board, Pieces, SmallKnife } from './loaf-parts.tsx';
import { cutAt } from './loaf-scene.ts';
import { mayReach } from './loaf-shape.ts';

export interface RowFigures {
  beforeG: number;
  afterG: number;
  highG: number;
  budgetG: number;
}

interface Props extends RowFigures {
  /** Grams at the right end, the same for all rows. */
  fullG: number;
  wide?: number;
  /** Says what the knife stands for; one row in a list does. */
  labelled?: boolean;
}

const FLOOR = 39;
const DOUGH = 27;
const LOAF = 30;

/** The knife's label is text beside the picture, so that it keeps its size where the picture shrinks. */
function KnifeLabel({ at, budgetG }: { at: number; budgetG: number }) {
  const left = at > 0.6;
  return (
    <span
      class={left ? 'knife-label knife-label-left' : 'knife-label'}
      style={{ insetInlineStart: `${100 * at}%` }}
      aria-hidden="true"
    >
      {say('upToGrams', short(budgetG))}
    </span>
  );
}

export function RowLoaf(props: Props) {
  if (!props.labelled) return <RowPicture {...props} />;
  const { budgetG, fullG, wide = 420 } = props;
  const at = (2 + (budgetG * (wide - 8)) / Math.max(fullG, 0.1)) / wide;
  return (
    <span class="row-loaf-box">
      <KnifeLabel at={at} budgetG={budgetG} />
      <RowPicture {...props} />
    </span>
  );
}

function RowPicture({ beforeG, afterG, highG, budgetG, fullG, wide = 420 }: Props) {
  const id = useId();
  const scale = (wide - 8) / Math.max(fullG, 0.1);
  const knife = 2 + budgetG * scale;
  const end = 2 + afterG * scale;
  const reach = 2 + Math.min(highG * scale, wide - 8);
  const pieces = cutAt(afterG * scale, knife, FLOOR, LOAF);
  const last = pieces.at(-1)?.box;
  return (
    <svg
      class="loaf row-loaf"
      role="img"
      aria-label={say('loafAlt', short(beforeG), short(afterG), short(budgetG))}
      width={wide}
      height="47"
      viewBox={`0 0 ${wide} 47`}
    >
      <Pieces
        look="dough"
        baked={{
          pieces: cutAt(beforeG * scale, Number.POSITIVE_INFINITY, FLOOR, DOUGH),
          blocks: [],
        }}
      />
      {last && reach - end >= 3 && (
        <>
          <clipPath id={id}>
            <rect x={last.to + 1.5} y="0" width={wide} height="47" />
          </clipPath>
          <path class="may-reach" clip-path={`url(#${id})`} d={mayReach({ ...last, to: reach })} />
        </>
      )}
      <Pieces look="baked" baked={{ pieces, blocks: [] }} />
      <Board wide={wide} at={41.5} />
      <SmallKnife at={knife} floor={41} />
    </svg>
  );
}
