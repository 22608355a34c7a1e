/** Settings go out with everything, and come in only when the user takes them. */
import 'fake-indexeddb/auto';
import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Preview, previewBackup } from '../../../extension/store/backup/import-preview.ts';
import { exportBackup, importBackup } from '../../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import { DEFAULT_PREFERENCES, type Preferences } from '../../../extension/store/prefs.ts';
import { ImportPreview } from '../../../extension/ui/kept/import-preview-part.tsx';
import { drawn } from '../../ui/screen.ts';

const MINE: Preferences = {
  ...DEFAULT_PREFERENCES,
  budgetG: 12,
  avoid: ['egg', 'milk'],
  person: { sglt2: true, kidneyDisease: false, needsCarePlan: false },
  country: 'de',
  never: [{ foodId: 'inulin', foodName: 'inulin' }],
  sweeteners: [{ foodId: 'erythritol', foodName: 'erythritol' }],
  meter: 'mmol/L',
  meterBand: { low: 4, high: 8 },
  lessonsOff: ['oven'],
  welcomed: true,
};

let there: Store;
let here: Store;
let count = 0;
beforeEach(() => {
  count += 1;
  there = openStore(() => {}, `settings-there-${count}`);
  here = openStore(() => {}, `settings-here-${count}`);
});
afterEach(async () => {
  await there.delete();
  await here.delete();
});

async function looked(text: string): Promise<Preview> {
  const answer = await previewBackup(here, text);
  if (!answer.ok) throw new Error(answer.why);
  return answer.preview;
}

const changed = (file: string, settings: unknown): string =>
  JSON.stringify({ ...JSON.parse(file), settings });

/** What is brought in when the preview's buttons are pressed. */
function pressed(preview: Preview, settled: boolean, ticks: number) {
  let brought: Partial<Preferences> | null | undefined;
  const onBringIn = (settings: Partial<Preferences> | null) => {
    brought = settings;
  };
  const screen = drawn(h(ImportPreview, { preview, settled, onBringIn, onLeave: () => {} }));
  const box = screen.root.querySelector('input');
  for (let n = 0; n < ticks; n += 1) void act(() => box?.click());
  void act(() => screen.root.querySelector<HTMLElement>('.button.first')?.click());
  screen.clear();
  return brought;
}

describe('settings in a file', () => {
  it('come back as they were', async () => {
    const file = await exportBackup(there, 1, null, MINE);
    expect((await looked(file)).settings).toEqual({ change: MINE, refused: 0 });
    expect(await importBackup(here, file)).toMatchObject({ ok: true });
  });

  it('are not in a file of a few recipes, nor in older files', async () => {
    expect((await looked(await exportBackup(there, 1, new Set(['a'])))).settings).toBeNull();
    const older = { ...JSON.parse(await exportBackup(there, 1)), version: 3 };
    expect((await looked(JSON.stringify(older))).settings).toBeNull();
  });

  it('that cannot be read stay as they are here', async () => {
    const file = await exportBackup(there, 1, null, MINE);
    const odd = { budgetG: -4, avoid: ['bread'], energy: 'kJ', toString: 1, more: 2 };
    expect((await looked(changed(file, odd))).settings).toEqual({
      change: { energy: 'kJ' },
      refused: 2,
    });
    for (const none of [7, 'x', []])
      expect((await looked(changed(file, none))).settings).toEqual({ change: {}, refused: 1 });
  });

  it('name no food that nobody knows', async () => {
    const never = [...MINE.never, { foodId: 'no-such-food', foodName: 'x' }];
    const file = await exportBackup(there, 1, null, { ...MINE, never });
    expect((await looked(file)).settings?.change.never).toEqual(MINE.never);
  });

  it('are taken where nothing was set yet, and left where something was, unless the user says so', async () => {
    const preview = await looked(await exportBackup(there, 1, null, MINE));
    expect(pressed(preview, false, 0)).toEqual(MINE);
    expect(pressed(preview, true, 0)).toBeNull();
    expect(pressed(preview, true, 1)).toEqual(MINE);
    expect(pressed(preview, false, 1)).toBeNull();
  });
});
