/** An invented page as long as real ones are: talk, cards of other pages, comments, and a recipe in it. */

const WORDS =
  'bread crust flour morning window river stone summer garden walked again because little water quiet basket market thought remember warm smell mother evening street lamp table which there about under after'.split(
    ' ',
  );
export const LINES = [
  '250 g plain flour',
  '120 g sugar',
  '2 eggs',
  '100 ml milk',
  '1 tsp baking powder',
  'a pinch of salt',
  '60 g butter, melted',
  '1 lemon, zest only',
];
const STEPS = [
  'Heat the oven to 180 °C and butter a tin.',
  'Whisk the eggs with the sugar until pale, some 5 minutes.',
  'Fold in the flour and the baking powder.',
  'Stir in the milk and the butter.',
  'Bake for 35 minutes until golden.',
];

/** The same words each time. */
function talker() {
  let seed = 7;
  const next = (below: number) => {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) >>> 0;
    return (seed >>> 8) % below;
  };
  const word = () => WORDS[next(WORDS.length)] ?? '';
  const sentence = () => `${Array.from({ length: 8 + next(10) }, word).join(' ')}.`;
  return {
    word,
    text: (sentences: number) => Array.from({ length: sentences }, sentence).join(' '),
  };
}

/** What a page is about; `serves` as it is printed. */
export interface Dish {
  title: string;
  serves: string;
  lines: readonly string[];
  steps: readonly string[];
}

const LEMON_BAKE: Dish = { title: 'Lemon bake', serves: 'Serves 8', lines: LINES, steps: STEPS };

const jsonLdOf = ({ title, serves, lines, steps }: Dish): string =>
  JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: title,
    recipeYield: serves,
    recipeIngredient: lines,
    recipeInstructions: steps.map((text) => ({ '@type': 'HowToStep', text })),
  });

export const JSON_LD = jsonLdOf(LEMON_BAKE);

/** HTML of some 400 KB in a few thousand elements, or a share of that; with or without JSON-LD. */
export function longPage(marked: boolean, dish: Dish = LEMON_BAKE, share = 1): string {
  const { word, text } = talker();
  const many = (count: number, draw: (n: number) => string) =>
    Array.from({ length: Math.ceil(count * share) }, (_, n) => draw(n)).join('');
  const nav = `<nav class="site-nav"><ul>${many(60, (n) => `<li class="menu-item item-${n}"><a href="/c/${n}"><span>${word()} ${word()}</span></a></li>`)}</ul></nav>`;
  const talk = (count: number) =>
    many(
      count,
      (n) =>
        `<p class="block">${text(4)} <a href="/x">${word()}</a> ${text(3)} <strong>${word()}</strong>.</p>` +
        (n % 6 === 0
          ? `<h2 class="heading">${word()} ${word()}</h2><figure><img src="/a.jpg" srcset="/a-1.jpg 300w, /a-2.jpg 600w" alt="x"></figure>`
          : ''),
    );
  const entries = (texts: readonly string[]) =>
    texts.map((one) => `<li><span>${one}</span></li>`).join('');
  const recipe = `<p>${dish.serves}</p><h2>Ingredients</h2><ul>${entries(dish.lines)}</ul><h2>Method</h2><ol>${entries(dish.steps)}</ol>`;
  const cards = many(
    80,
    (n) =>
      `<div class="card card-${n}"><a href="/p/${n}"><img src="/i.jpg" srcset="/i-3.jpg 300w, /i-6.jpg 600w" alt="${word()}"></a><div class="body"><h3><a href="/p/${n}">${word()} ${word()}</a></h3><p>${text(1)}</p><span>${n} min</span></div></div>`,
  );
  const comments = many(
    220,
    (n) =>
      `<li class="comment" id="comment-${n}"><article class="comment-body"><footer><b class="fn">${word()}</b> <time>1 January</time></footer><div><p>${text(4)}</p><p>${text(1)}</p></div></article></li>`,
  );
  return `<!doctype html><html lang="en"><head><title>${dish.title} - Site</title>${marked ? `<script type="application/ld+json">${jsonLdOf(dish)}</script>` : ''}<style>${'.a{color:red}'.repeat(Math.ceil(2_000 * share))}</style></head><body>${nav}<main><article><h1>${dish.title}</h1>${talk(200)}${recipe}${talk(100)}</article><section class="related">${cards}</section><ol class="comment-list">${comments}</ol></main><footer>${nav}</footer></body></html>`;
}
