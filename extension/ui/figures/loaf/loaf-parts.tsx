/** Pieces of loaf, knife and board, from which every picture of one is put together. */
import { useId } from 'preact/hooks';
import type { Baked, Piece } from './loaf-scene.ts';
import {
  face,
  holes,
  leftPiece,
  rightPiece,
  score,
  scoreStarts,
  seam,
  slantedBlock,
  wholeLoaf,
} from './loaf-shape.ts';

type Look = 'dough' | 'baked';

/** Scores stand closer on the loaf than on the dough, in heights. */
const APART: Record<Look, number> = { baked: 0.8, dough: 1.2 };

function outline({ box, kind }: Piece): string {
  if (kind === 'whole') return wholeLoaf(box);
  return kind === 'left' ? leftPiece(box) : rightPiece(box);
}

function Scores({ piece, look }: { piece: Piece; look: Look }) {
  return (
    <>
      {scoreStarts(piece.box, APART[look]).map((start) => {
        const { lens, ear } = score(start, piece.box);
        return look === 'dough' ? (
          <path key={start} class="dough-score" d={lens} />
        ) : (
          <g key={start}>
            <path class="score" d={lens} />
            <path class="ear" d={ear} />
          </g>
        );
      })}
    </>
  );
}

function Face({ piece, look }: { piece: Piece; look: Look }) {
  const prefix = look === 'dough' ? 'dough-' : '';
  return (
    <>
      <path class={`${prefix}face`} d={face(piece.box)} />
      {holes(piece.box).map(({ x, y, rx, ry }) => (
        <ellipse key={y} class={`${prefix}hole`} cx={x} cy={y} rx={rx} ry={ry} />
      ))}
    </>
  );
}

interface BlocksProps {
  piece: Piece;
  blocks: Baked['blocks'];
  look: Look;
  clip: string;
}

function Blocks({ piece, blocks, look, clip }: BlocksProps) {
  return (
    <>
      <clipPath id={clip}>
        <path d={outline(piece)} />
      </clipPath>
      <g clip-path={`url(#${clip})`}>
        {blocks.map(({ group, from, to }, at) => (
          <g key={group}>
            {group !== 'flour' && (
              <path
                fill={`url(#${look}-${group})`}
                d={slantedBlock(from, at === blocks.length - 1 ? to + 200 : to, piece.box)}
              />
            )}
            {at > 0 && <path class={`${look}-seam`} d={seam(from, piece.box)} />}
          </g>
        ))}
      </g>
    </>
  );
}

/** One length of dough or loaf with its scores, groups, and the crumb where it is cut. */
export function Pieces({ baked, look }: { baked: Baked; look: Look }) {
  const id = useId();
  return (
    <g class={look}>
      {baked.pieces.map((piece) => (
        <g key={piece.kind}>
          <path class={`${look}-body`} d={outline(piece)} />
          {baked.blocks.length > 1 && (
            <Blocks
              piece={piece}
              blocks={baked.blocks}
              look={look}
              clip={`${id}-${look}-${piece.kind}`}
            />
          )}
          <Scores piece={piece} look={look} />
        </g>
      ))}
      {baked.pieces.map(
        (piece) => piece.kind === 'left' && <Face key="face" piece={piece} look={look} />,
      )}
    </g>
  );
}

/** The towel's double stripe, as the board under the loaf. */
export function Board({ wide, at }: { wide: number; at: number }) {
  return (
    <>
      <path class="board-wide" d={`M0 ${at}H${wide}`} />
      <path class="board-narrow" d={`M0 ${at + 4}H${wide}`} />
    </>
  );
}

/** A bread knife, point down: its edge is the budget. */
export function Knife({ at, floor }: { at: number; floor: number }) {
  const left = at - 4.5;
  const teeth = 'q2 3 0 6'.repeat(Math.max(1, Math.floor((floor - 22) / 6)));
  return (
    <g class="knife">
      <path d={`M${left} 4q0-4 4.5-4t4.5 4q0 3-.9 6t.9 10H${left}q1.6-3 .9-10t-.9-6Z`} />
      <circle class="rivet" cx={at} cy="5.5" r="1.3" />
      <circle class="rivet" cx={at} cy="13" r="1.3" />
      <path d={`M${at - 2.2} 19.5H${at + 2}${teeth}Q${at + 2} ${floor} ${at - 2.2} ${floor}Z`} />
    </g>
  );
}

/** From the knife's point down to the board, where it cuts nothing: no more than a thread, so that it hides nothing. */
export function KnifeLine({ at, from, to }: { at: number; from: number; to: number }) {
  return <path class="knife-line" d={`M${at} ${from}V${to}`} />;
}

/** The knife of a row in a list. */
export function SmallKnife({ at, floor }: { at: number; floor: number }) {
  return (
    <path
      class="knife"
      d={`M${at - 2.2} 1.5q0-1.5 2.2-1.5t2.2 1.5V9H${at + 1}V${floor}H${at - 1}V9H${at - 2.2}Z`}
    />
  );
}
