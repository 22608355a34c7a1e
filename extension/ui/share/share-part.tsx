/** A recipe to show others: a picture of its figures, a page of one's own, the system's share sheet. */

import { useState } from 'preact/hooks';
import { toPublishing, toText } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { downloadBlob, downloadText, fileName } from '../controls/download.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { say } from '../words/say.ts';
import { cardSvg } from './picture-card.ts';
import { canShare, pngOf, shareOut } from './share-sheet.ts';

interface Props {
  adaptation: Adaptation;
  factor: number;
  /** What the user wrote to the kept state. */
  note: string;
}

export function SharePart({ adaptation, factor, note }: Props) {
  const [failure, setFailure] = useState(false);
  const { title } = adaptation.recipe;
  const attempt = (job: () => Promise<unknown>) => () =>
    void job().then(
      () => setFailure(false),
      (error) => {
        console.error(error);
        setFailure(true);
      },
    );
  const picture = async () => {
    const png = await pngOf(cardSvg(adaptation));
    return new File([png], fileName(title, 'png'), { type: 'image/png' });
  };
  const acts: readonly [string, () => Promise<unknown>][] = [
    ...(canShare()
      ? [
          [
            say('share'),
            async () => shareOut(title, toText(adaptation, { factor }), await picture()),
          ] as [string, () => Promise<unknown>],
        ]
      : []),
    [say('savePicture'), async () => downloadBlob(await picture(), fileName(title, 'png'))],
    [
      say('saveDrawing'),
      async () => downloadText(cardSvg(adaptation), fileName(title, 'svg'), 'image/svg+xml'),
    ],
    [
      say('saveForPublishing'),
      async () =>
        downloadText(
          toPublishing(adaptation, { factor, note }),
          fileName(`${title} for publishing`, 'md'),
          'text/markdown',
        ),
    ],
  ];
  return (
    <div class="share-part">
      <div class="acts">
        {acts.map(([word, job]) => (
          <button key={word} type="button" class="button" onClick={attempt(job)}>
            {word}
          </button>
        ))}
      </div>
      <p class="soft">{say('publishingWhy')}</p>
      <FailureLine text={failure && say('couldNotShare')} />
    </div>
  );
}
