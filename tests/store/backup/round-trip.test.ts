/** Files out and in again, over generated kitchens: nothing is lost, and what was foretold happens. */
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { previewBackup } from '../../../extension/store/backup/import-preview.ts';
import { exportBackup, importBackup } from '../../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import { saveBake } from '../../../extension/store/kept/kept-bakes.ts';
import { photoOfBake, photoOfRecipe, savePhoto } from '../../../extension/store/kept/photos.ts';
import { retag, saveRecipe, sayOfRecipe } from '../../../extension/store/kept/saved.ts';
import { sampleBake, sampleRecipe, sampleWork } from '../sample.ts';

/** One thing a cook does; moments never go back. */
const step = fc.record({
  recipe: fc.constantFrom('rolls', 'loaf', 'cake'),
  budgetG: fc.integer({ min: 5, max: 40 }),
  note: fc.string({ unit: 'grapheme', maxLength: 30 }),
  tags: fc.uniqueArray(fc.string({ minLength: 1, maxLength: 8 }), { maxLength: 3 }),
  bakes: fc.boolean(),
  photo: fc.boolean(),
});
type Step = {
  recipe: string;
  budgetG: number;
  note: string;
  tags: string[];
  bakes: boolean;
  photo: boolean;
};

let count = 0;
const fresh = (): Store => {
  count += 1;
  return openStore(() => {}, `round-trip-${count}`);
};

async function cook(store: Store, steps: readonly Step[], from = 1000): Promise<void> {
  for (const [at, { recipe, budgetG, note, tags, bakes, photo }] of steps.entries()) {
    const now = from + at;
    const work = sampleWork({
      recipe: sampleRecipe({ title: recipe, url: `https://kitchen.example/${recipe}` }),
      goals: { ...DEFAULT_GOALS, budgetG },
    });
    const saved = await saveRecipe(store, work, recipe, now);
    await sayOfRecipe(store, saved.id, { note });
    await retag(store, saved.id, saved.tags, tags);
    const id = `bake-${from}-${at}`;
    if (bakes) await saveBake(store, sampleBake({ id, recipeId: recipe, addedAt: now }));
    const data = 'data:image/png;base64,AAAA';
    if (photo) {
      const owner = bakes ? photoOfBake(id) : photoOfRecipe(recipe);
      await savePhoto(store, { id: owner, data, small: data, addedAt: now });
    }
  }
}

/** A row as text, its keys in order. */
const sorted = (row: unknown): string =>
  JSON.stringify(row, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

/** Everything in the file, in an order of its own. */
async function contents(store: Store): Promise<Record<string, unknown>> {
  const { exportedAt: _, ...file } = JSON.parse(await exportBackup(store, 0));
  return Object.fromEntries(
    Object.entries(file).map(([name, rows]) => [
      name,
      Array.isArray(rows) ? rows.map(sorted).sort() : rows,
    ]),
  );
}

describe('a backup', () => {
  it('brings everything to an empty browser, as it was', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 8 }), async (steps) => {
        const [there, here] = [fresh(), fresh()];
        await cook(there, steps);
        const file = await exportBackup(there, 5000);
        expect(await importBackup(here, file)).toMatchObject({ ok: true });
        expect(await contents(here)).toEqual(await contents(there));
        // A second time brings nothing.
        const before = await contents(here);
        expect(await importBackup(here, file)).toMatchObject({
          ok: true,
          count: { added: 0, merged: 0 },
        });
        expect(await contents(here)).toEqual(before);
        await Promise.all([there.delete(), here.delete()]);
      }),
      { numRuns: 20, seed: 11 },
    );
  });

  it('does what its preview says, and the preview changes nothing', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(step, { maxLength: 6 }),
        fc.array(step, { maxLength: 6 }),
        fc.boolean(),
        async (theirs, mine, later) => {
          const [there, here] = [fresh(), fresh()];
          await cook(there, theirs, later ? 2000 : 1000);
          await cook(here, mine, later ? 1000 : 2000);
          const file = await exportBackup(there, 5000);
          const before = await contents(here);
          const told = await previewBackup(here, file);
          expect(await contents(here)).toEqual(before);
          const done = await importBackup(here, file);
          if (!told.ok || !done.ok) throw new Error('refused');
          const standing = (name: string) =>
            told.preview.recipes.filter((one) => one.standing === name).length;
          const { added } = told.preview;
          expect(done.count).toMatchObject({
            added: standing('new'),
            merged: standing('fileNewer') + standing('hereNewer'),
            same: standing('same'),
            bakes: added.bakes,
            photos: added.photos,
          });
          for (const { id, standing: stands } of told.preview.recipes) {
            const top = await here.recipes.get(id);
            const from = stands === 'hereNewer' ? mine : theirs;
            const last = from.findLast(({ recipe }) => recipe === id);
            if (stands !== 'same') expect(top?.goals.budgetG).toBe(last?.budgetG);
          }
          await Promise.all([there.delete(), here.delete()]);
        },
      ),
      { numRuns: 20, seed: 12 },
    );
  });

  it('loses no state of either side', async () => {
    const budgets = async (store: Store) => {
      const rows = [...(await store.recipes.toArray()), ...(await store.versions.toArray())];
      return new Set(rows.map(({ recipe, goals }) => `${recipe.title} ${goals.budgetG}`));
    };
    await fc.assert(
      fc.asyncProperty(
        fc.array(step, { maxLength: 6 }),
        fc.array(step, { maxLength: 6 }),
        async (theirs, mine) => {
          const [there, here] = [fresh(), fresh()];
          await cook(there, theirs);
          await cook(here, mine);
          const wanted = new Set([...(await budgets(there)), ...(await budgets(here))]);
          await importBackup(here, await exportBackup(there, 5000));
          expect(await budgets(here)).toEqual(wanted);
          await Promise.all([there.delete(), here.delete()]);
        },
      ),
      { numRuns: 20, seed: 13 },
    );
  });
});

describe('the preview', () => {
  it('names what cannot be read, and refuses what is no backup', async () => {
    const [there, here] = [fresh(), fresh()];
    await cook(there, [
      { recipe: 'rolls', budgetG: 10, note: '', tags: [], bakes: true, photo: true },
    ]);
    const file = JSON.parse(await exportBackup(there, 1));
    file.bakes.push({ id: 'broken' });
    file.photos.push({
      id: 'recipe:x',
      data: 'https://kitchen.example/spy.png',
      small: '',
      addedAt: 1,
    });
    const told = await previewBackup(here, JSON.stringify(file));
    expect(told).toMatchObject({
      ok: true,
      preview: { added: { bakes: 1, photos: 1 }, refused: { bakes: 1, photos: 1, recipes: 0 } },
    });
    expect(await previewBackup(here, '[]')).toMatchObject({ ok: false });
    await Promise.all([there.delete(), here.delete()]);
  });

  it('knows files of both older versions', async () => {
    const [there, here] = [fresh(), fresh()];
    await cook(there, [
      { recipe: 'rolls', budgetG: 10, note: '', tags: [], bakes: true, photo: false },
    ]);
    const { photos: _p, ...second } = JSON.parse(await exportBackup(there, 1));
    const { bakes: _b, aliases: _a, pantry: _y, ...first } = second;
    for (const [version, file] of [
      [2, second],
      [1, first],
    ] as const) {
      const told = await previewBackup(here, JSON.stringify({ ...file, version }));
      expect(told).toMatchObject({
        ok: true,
        preview: { recipes: [{ standing: 'new', title: 'rolls' }] },
      });
    }
    await Promise.all([there.delete(), here.delete()]);
  });
});
