/** What the recipe on the bench, and kept ones beside it, need from the shops. */

import { useEffect, useMemo, useState } from 'preact/hooks';
import { type FoodTable, foodTable } from '../../../../engine/index.ts';
import { getRecipe } from '../../../store/kept/saved.ts';
import { listShelf } from '../../../store/kept/shelf.ts';
import type { ShelfRow } from '../../../store/kept/shelf-row.ts';
import type { SavedRecipe } from '../../../store/records.ts';
import { AislePart } from '../../../ui/buy/aisle.tsx';
import { AISLES, buyList, type Dish, type ToBuy } from '../../../ui/buy/buy-list.ts';
import { buyText } from '../../../ui/buy/buy-text.ts';
import { DishChoice } from '../../../ui/buy/dish-choice.tsx';
import { BeginLinks } from '../../../ui/controls/begin-links.tsx';
import { EmptyBoard } from '../../../ui/figures/loaf/empty-board.tsx';
import { foodWord } from '../../../ui/words/food-words.ts';
import { say, sayList } from '../../../ui/words/say.ts';
import type { OpenRecipe, PlaceProps } from '../kitchen.ts';
import '../../../ui/styles/buy.css';

/** Kept dishes that have a result, without the one on the bench. */
function useKept({ kitchen, open }: PlaceProps): readonly ShelfRow[] {
  const [kept, setKept] = useState<readonly ShelfRow[]>([]);
  useEffect(() => {
    listShelf(kitchen.store).then(
      ({ rows }) => setKept(rows.filter(({ state }) => state !== null)),
      () => setKept([]),
    );
  }, [kitchen.saves, kitchen.imports]);
  const openId = open?.work.current.savedId ?? null;
  return kept.filter(({ id }) => id !== openId);
}

/** The recipes of these ids, read one by one: thousands may be kept. Null for one that cannot be read. */
function useRecipes({ kitchen }: PlaceProps, ids: ReadonlySet<string>) {
  const [read, setRead] = useState<ReadonlyMap<string, SavedRecipe | null>>(new Map());
  const wanted = [...ids].join(' ');
  useEffect(() => {
    Promise.all([...ids].map(async (id) => [id, await getRecipe(kitchen.store, id)] as const)).then(
      (rows) => setRead(new Map(rows)),
      () => setRead(new Map()),
    );
  }, [wanted, kitchen.saves, kitchen.imports]);
  return read;
}

const dishesOf = (open: OpenRecipe | null, chosen: readonly SavedRecipe[]): Dish[] => [
  ...(open
    ? [
        {
          title: open.adaptation.recipe.title,
          plan: open.adaptation.plan,
          factor: open.factor,
        },
      ]
    : []),
  ...chosen.flatMap(({ recipe, adaptation }) =>
    adaptation ? [{ title: recipe.title, plan: adaptation.plan, factor: 1 }] : [],
  ),
];

/** Copies the list; says so where it is heard and seen. */
function CopyButton({ text }: { text: string }) {
  const [copied, setCopied] = useState<boolean | null>(null);
  const copy = () =>
    navigator.clipboard.writeText(text).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  return (
    <>
      <button type="button" class="button" onClick={() => void copy()}>
        {say('copyList')}
      </button>
      <span role="status">{copied !== null && say(copied ? 'listCopied' : 'listNotCopied')}</span>
    </>
  );
}

function Already({ foods }: { foods: readonly ToBuy[] }) {
  if (foods.length === 0) return null;
  return (
    <p class="already">
      <b>{say('inCupboardAlready')}</b>{' '}
      {sayList(foods.map(({ foodId, food }) => foodWord(foodId, food)))}.{' '}
      <a href="#cupboard">{say('lookAtCupboard')}</a>
    </p>
  );
}

interface HeadProps {
  titles: readonly string[];
  missing: readonly ToBuy[];
  table: FoodTable;
}

function BuyHead({ titles, missing, table }: HeadProps) {
  return (
    <header class="place-head">
      <h1>{say('placeBuy')}</h1>
      {missing.length > 0 && (
        <div class="acts">
          <CopyButton text={buyText(titles, missing, table)} />
          <button type="button" class="button" onClick={() => print()}>
            {say('print')}
          </button>
        </div>
      )}
    </header>
  );
}

export function BuyPlace({ kitchen, open }: PlaceProps) {
  const { pantry, own } = kitchen;
  const table = useMemo(() => foodTable(own.foods), [own.foods]);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set(kitchen.buyFor));
  const recipes = useRecipes({ kitchen, open }, chosen);
  const kept = useKept({ kitchen, open }).filter(({ id }) => recipes.get(id) !== null);
  // What was at home when the list was opened is no news; what is ticked now stays in sight.
  const [homeBefore] = useState(() => new Set(pantry.foods.map(({ foodId }) => foodId)));
  const atHome = useMemo(() => new Set(pantry.foods.map(({ foodId }) => foodId)), [pantry.foods]);
  const dishes = dishesOf(
    open,
    kept.flatMap(({ id }) => (chosen.has(id) && recipes.get(id)) || []),
  );
  const foods = buyList(dishes);
  const already = foods.filter(({ foodId }) => homeBefore.has(foodId) && atHome.has(foodId));
  const listed = foods.filter((one) => !already.includes(one));
  const choose = (id: string, add: boolean) => {
    const others = [...chosen].filter((one) => one !== id);
    setChosen(new Set(add ? [...others, id] : others));
  };
  const without = open
    ? ({ foodId }: ToBuy) =>
        open.work.changeGoals({
          excludedFoods: [...open.work.current.goals.excludedFoods, foodId],
        })
    : undefined;
  return (
    <section class="place buy">
      <BuyHead
        titles={dishes.map(({ title }) => title)}
        table={table}
        missing={listed.filter(({ foodId }) => !atHome.has(foodId))}
      />
      <DishChoice
        open={open?.adaptation.recipe.title ?? null}
        kept={kept}
        chosen={chosen}
        onChoose={choose}
      />
      {dishes.length === 0 && (
        <>
          <EmptyBoard />
          <p>{say('buyNoDish')}</p>
          <BeginLinks />
        </>
      )}
      {dishes.length > 0 && listed.length === 0 && <p>{say('nothingToBuy')}</p>}
      <div class="aisles">
        {AISLES.map((aisle) => (
          <AislePart
            key={aisle}
            table={table}
            aisle={aisle}
            foods={listed.filter((one) => one.aisle === aisle)}
            atHome={atHome}
            onHome={({ foodId, food }, has) =>
              has ? pantry.add({ foodId, foodName: food }) : pantry.take(foodId)
            }
            onWithout={aisle === 'seldom' ? without : undefined}
          />
        ))}
      </div>
      <Already foods={already} />
    </section>
  );
}
