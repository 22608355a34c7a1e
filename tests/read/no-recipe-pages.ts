/**
 * Pages of kinds that hold no recipe though they speak of food, list things with amounts or give numbered
 * steps. All are invented; each is about as long as its kind is.
 */

const items = (texts: readonly string[]) => texts.map((text) => `<li>${text}</li>`).join('');
const paragraphs = (texts: readonly string[]) => texts.map((text) => `<p>${text}</p>`).join('');
const rows = (lines: readonly (readonly string[])[]) =>
  `<table>${lines.map((line) => `<tr>${line.map((cell) => `<td>${cell}</td>`).join('')}</tr>`).join('')}</table>`;

const links = (names: readonly string[]) => items(names.map((name) => `<a href="/x">${name}</a>`));
const MENU = ['Home', 'News', 'Shop', 'About us', 'Contact'];

function page(title: string, body: string): string {
  return `<!doctype html><html lang="en"><head><title>${title} | The Harbour Post</title></head><body>
<header><nav><ul>${links(MENU)}</ul></nav></header><main><h1>${title}</h1>${body}</main>
<aside><h3>Most read</h3><ol>${links(['Bridge opens again', 'The long dry summer', 'Ten quick dinners'])}</ol></aside>
<footer><p>All rights reserved.</p></footer></body></html>`;
}

/** Running text on a theme, some three hundred words. */
function talk(...themes: string[]): string {
  const frames = [
    'Nobody in the town had thought much about {} until the winter before last, when the harbour froze and the ferries stayed in port for nine days.',
    'It was then that people began to talk of {} in the shops and on the quay, first as a joke and later in earnest.',
    'A report of 48 pages followed in spring. It says that {} costs the average household 12 hours a month and about 35 a week.',
    'Others see it differently. For them {} is a matter of habit, and habits, they say, change slowly: two or three generations at least.',
    'In the meantime the council has set aside 250,000 for the next 4 years, of which a third goes to the schools.',
    'What remains open is who will look after {} once the money is spent. The next meeting is on 14 May at 7.30 pm.',
  ];
  return paragraphs(themes.flatMap((theme) => frames.map((frame) => frame.replace('{}', theme))));
}

export const NO_RECIPE: Record<string, string> = {
  'news article': page(
    'Ferries back after nine days',
    talk('the crossing', 'the cost of the crossing'),
  ),
  'food news with amounts': page(
    'Flour is dearer again',
    `${talk('the price of flour')}<h2>What has become dearer</h2><ul>${items([
      '1 kg flour: up 12 %',
      '250 g butter: up 30 %',
      '10 eggs: up 8 %',
      '1 l milk: down 2 %',
    ])}</ul>${talk('baking at home')}`,
  ),
  'shop product': page(
    'Stoneground flour, 1 kg',
    `<p class="price">4.90</p><button>Add to basket</button><h2>Description</h2>${talk('this flour')}
<h2>Ingredients</h2><p>Wheat flour, calcium carbonate, iron, niacin, thiamin.</p>
<h2>Nutrition per 100 g</h2>${rows([
      ['Energy', '1440 kJ'],
      ['Fat', '1.3 g'],
      ['Carbohydrate', '71 g'],
      ['Protein', '11 g'],
    ])}<h2>Reviews</h2><p>Good flour, came in 2 days.</p>`,
  ),
  'packaged food with directions': page(
    'Tomato soup in a tin',
    `<h2>Ingredients</h2><ul>${items(['Tomatoes (84%)', 'Water', 'Sugar', 'Salt', 'Basil'])}</ul>
<h2>Directions</h2><p>Heat gently in a pan for five minutes. Do not boil. Once opened keep cool and use within two days.</p>
<h2>Storage</h2><p>Keep in a cool place.</p>${talk('tinned soup')}`,
  ),
  cosmetics: page(
    'Oat hand cream 75 ml',
    `<h2>How to use</h2><ol>${items(['Wash your hands.', 'Take a small amount.', 'Rub in until absorbed.'])}</ol>
<h2>Ingredients</h2><p>Aqua, Glycerin, Avena Sativa Kernel Oil, Cetearyl Alcohol, Parfum, Citric Acid.</p>${talk('dry hands')}`,
  ),
  'recipe index': page(
    'Cakes and bakes',
    `<p>212 recipes</p><div class="grid">${[
      'Lemon loaf',
      'Plum cake',
      'Oat bars',
      'Rye rolls',
      'Nut torte',
      'Cheese buns',
      'Seed crackers',
      'Apple pie',
    ]
      .map(
        (name, i) =>
          `<article><h3><a href="/r">${name}</a></h3><p>${i + 2} ingredients</p><p>${20 + i * 5} min</p><p>Serves ${i + 2}</p></article>`,
      )
      .join('')}</div><a href="/2">Next page</a>`,
  ),
  'search results': page(
    'Results for “onion soup”',
    `<p>1–10 of 240</p><ol>${[1, 2, 3, 4, 5, 6]
      .map(
        (n) =>
          `<li><h3><a href="/r${n}">Onion soup number ${n}</a></h3><p>4 onions, 50 g butter, 1 l stock … a soup for cold days, ready in ${n * 10} minutes …</p></li>`,
      )
      .join('')}</ol>`,
  ),
  'comment thread': page(
    'What did you bake this weekend?',
    Array.from(
      { length: 14 },
      (_, n) =>
        `<div class="post"><b>Baker ${n}</b><p>I used ${n + 200} g flour and ${n + 1} eggs this time and it rose well. My oven runs hot though, so 20 min was too long.</p></div>`,
    ).join(''),
  ),
  'forum question': page(
    'My dough is too wet, help?',
    `<div class="question">${paragraphs([
      'I have made this loaf five times now and each time the dough ran off the board. I weigh all of it.',
      'What I use is 500 g flour, 400 g water, 10 g salt. Is that too much water for a beginner?',
      'The kitchen is at about 21 degrees and I knead for 10 minutes.',
    ])}</div><h2>3 answers</h2>${[1, 2, 3]
      .map(
        (n) =>
          `<div class="answer"><p>80 % water is a lot. Take ${320 + n * 5} g and see. Then go up by 5 g at a time as your hands learn.</p><p>Also let it stand for half an hour before you knead.</p></div>`,
      )
      .join('')}`,
  ),
  'restaurant menu': page(
    'Our menu',
    `<h2>Starters</h2><ul>${items(['Onion soup 7.50', 'Green salad, nuts 6', 'Bread and 2 spreads 5'])}</ul>
<h2>Mains</h2><ul>${items(['200 g steak, fries 24', 'Trout, potatoes 21', 'Risotto of the day 17', '½ chicken, salad 16'])}</ul>
<h2>Desserts</h2><ul>${items(['Plum cake 6', '2 scoops of ice 4', 'Cheese 9'])}</ul><p>All prices with tax. Tell us of allergies.</p>`,
  ),
  'cookbook in a shop': page(
    'The Rye Book (hardback, 256 pages)',
    `<p>28.00</p>${talk('rye bread')}<h2>Contents</h2><ol>${items(['Flour and water', 'The first loaf', 'Rolls', 'Sweet doughs', 'What went wrong'])}</ol>
<h2>Details</h2>${rows([
      ['Weight', '980 g'],
      ['Pages', '256'],
      ['Language', 'English'],
    ])}`,
  ),
  'nutrition database': page(
    'Oats, rolled, dry',
    `<p>Serving size: 40 g</p>${rows([
      ['Energy', '379 kcal'],
      ['Protein', '13.2 g'],
      ['Fat', '6.5 g'],
      ['Carbohydrate', '67.7 g'],
      ['Fibre', '10.1 g'],
      ['Calcium', '52 mg'],
      ['Iron', '4.3 mg'],
    ])}<h2>Household measures</h2><ul>${items(['1 cup: 81 g', '1 tbsp: 5 g', '100 g'])}</ul><p>Figures for the food as sold.</p>`,
  ),
  'diet article with lists': page(
    'Eating more fibre',
    `${talk('fibre')}<h2>Foods with much of it</h2><ul>${items(['Lentils: 8 g in 100 g', 'Oats: 10 g in 100 g', 'Pears: 3 g each', 'Almonds: 12 g in 100 g'])}</ul>
<h2>Five steps</h2><ol>${items(['Begin slowly.', 'Drink more.', 'Change one meal a week.', 'Keep the peel on.', 'Ask your doctor when in doubt.'])}</ol>${talk('whole grain')}`,
  ),
  'meal plan': page(
    'A week of dinners',
    ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday']
      .map(
        (day, n) =>
          `<h2>${day}</h2><ul>${items([`Breakfast: porridge, 1 apple`, `Lunch: soup, 2 slices of bread`, `Dinner: fish, ${150 + n * 10} g potatoes`])}</ul><p>About ${1700 + n * 20} kcal.</p>`,
      )
      .join(''),
  ),
  'packing list': page(
    'What to take to the hut',
    `${talk('the path to the hut')}<h2>What you need</h2><ul>${items(['2 pairs of socks', '1 sleeping bag', '3 l water', '1 torch', '2 maps', 'Matches'])}</ul>
<h2>Before you go</h2><ol>${items(['Tell someone where you go.', 'Look at the weather.', 'Lock the door.'])}</ol>`,
  ),
  'gardening with steps': page(
    'How to plant tulips',
    `${talk('tulips')}<h2>You will need</h2><ul>${items(['20 bulbs', 'a spade', '2 buckets of compost', 'gloves'])}</ul>
<h2>Step by step</h2><ol>${items(['Dig a hole 15 cm deep.', 'Put the bulbs in 10 cm apart.', 'Cover them with soil.', 'Water well and wait for spring.'])}</ol>`,
  ),
  'chemistry protocol': page(
    'Agarose gel, protocol 7',
    `<h2>Materials</h2><ul>${items(['1 g agarose', '100 ml TAE buffer', '5 µl dye', 'gel tray and comb'])}</ul>
<h2>Procedure</h2><ol>${items(['Weigh the agarose into a flask.', 'Add the buffer and heat until it is clear.', 'Cool to 60 °C, add the dye and pour.', 'Run at 100 V for 40 minutes.'])}</ol><p>Dispose of gels as laid down in the safety sheet.</p>`,
  ),
  'cleaning mixture': page(
    'A cleaner for windows',
    `${talk('clean windows')}<h2>What you need</h2><ul>${items(['a spray bottle', 'a soft cloth', 'white vinegar', 'water'])}</ul>
<h2>How to do it</h2><ol>${items(['Fill the bottle with vinegar and water.', 'Spray, wait a minute.', 'Wipe dry with the cloth.'])}</ol>`,
  ),
  'repair guide': page(
    'Change a bicycle tube',
    `<h2>Tools</h2><ul>${items(['2 tyre levers', '1 pump', '1 new tube, 28 inch'])}</ul><h2>Instructions</h2><ol>${items(['Take the wheel out.', 'Lift the tyre off with the levers.', 'Put the new tube in and pump it to 4 bar.'])}</ol>${talk('bicycles')}`,
  ),
  'wiki article about a food': page(
    'Rye bread',
    `${talk('rye bread')}<h2>Ingredients</h2><p>Rye bread is made from rye flour, water and salt, and raised with sourdough; in the north it often holds whole grains, syrup or caraway. Its crumb is dense because rye has little gluten.</p>
<h2>Preparation</h2><p>The dough is left to sour for a day or more and baked slowly, in some places for as long as 24 hours at a low heat. Loaves keep for weeks.</p><h2>History</h2>${talk('the grain')}`,
  ),
  'video page': page(
    'Watch: the fold that makes the crust',
    `<div class="player"><video></video></div><p>12,340 views · 3 days ago</p><h2>Captions</h2>${paragraphs(
      [
        '0:00 Hello and welcome. Today we look at folding.',
        '0:14 You take two corners, not four, and pull.',
        '1:02 Then wait 30 minutes and do it again.',
        '2:40 That is all. See you next week.',
      ],
    )}<h2>Up next</h2><ul>${links(['Shaping rolls', '5 knives compared', 'A visit to the mill'])}</ul>`,
  ),
  'login page': page(
    'Sign in',
    '<form><label>Name <input></label><label>Password <input type="password"></label><button>Sign in</button></form><p>New here? <a href="/j">Join</a></p>',
  ),
  'shopping list': page(
    'My shopping list',
    `<ul>${items(['2 onions', '500 g flour', '1 l milk', '6 eggs', 'Soap', '3 bin bags'])}</ul><button>Clear list</button>`,
  ),
  'kitchen gear review': page(
    'Four stand mixers compared',
    `${talk('stand mixers')}${rows([
      ['Model', 'Bowl', 'Power', 'Weight'],
      ['A', '4.5 l', '900 W', '8 kg'],
      ['B', '5 l', '1200 W', '9 kg'],
      ['C', '3 l', '600 W', '5 kg'],
    ])}
<h2>How we tested</h2><ol>${items(['We kneaded 1 kg of bread dough for 10 minutes.', 'We whipped 2 egg whites.', 'We measured the noise.'])}</ol>${talk('noise')}`,
  ),
  'questions and answers': page(
    'Questions about delivery',
    [1, 2, 3, 4, 5]
      .map(
        (n) =>
          `<h3>${n}. When will my box come?</h3><p>Within ${n + 1} days. A box holds 3 kg of fruit, 2 kg of vegetables and 6 eggs, and costs 29.</p>`,
      )
      .join(''),
  ),
  'cookie wall': page(
    'Before you go on',
    `<div class="cookie-consent"><p>We use cookies and 214 partners do too. You may change your mind at any time.</p><button>Accept all</button><button>Preferences</button></div>`,
  ),
  'not found': page(
    'Page not found',
    '<p>This page is not here any more. Perhaps one of these helps:</p><ul><li><a href="/">Start</a></li><li><a href="/s">Search</a></li></ul>',
  ),
  gallery: page(
    'Harvest in pictures',
    Array.from(
      { length: 18 },
      (_, n) =>
        `<figure><img src="/${n}.jpg" alt=""><figcaption>${n + 1} of 18: the carts come in</figcaption></figure>`,
    ).join(''),
  ),
  changelog: page(
    'Changes',
    ['3.2', '3.1', '3.0']
      .map(
        (version) =>
          `<h2>Version ${version}</h2><ul>${items(['2 new commands', 'Mix of tabs and blanks is told of', '15 fixes, 3 of them old', 'Half the memory'])}</ul>`,
      )
      .join(''),
  ),
  'programming manual': page(
    'read(path, options)',
    `<h2>Parameters</h2><dl><dt>path</dt><dd>string</dd><dt>options.limit</dt><dd>number, 100 at first</dd></dl><h2>Steps</h2><ol>${items(['Install the package.', 'Call read() with a path.', 'Handle the promise.'])}</ol><pre>const one = await read('notes.txt', { limit: 2 });</pre>${talk('this function')}`,
  ),
  'job advertisement': page(
    'Baker wanted (40 hours)',
    `${talk('the bakery')}<h2>What you need</h2><ul>${items(['2 years of practice', '1 certificate of hygiene', 'Early hours do not trouble you'])}</ul><h2>What we offer</h2><ul>${items(['30 days of holiday', '5 shifts a week', 'Bread every day'])}</ul>`,
  ),
  'event page': page(
    'Bread day at the mill',
    `<p>Sunday 4 June, 10–17</p><h2>Programme</h2><ul>${items(['10.00 The mill starts', '11.30 2 kg loaves for all', '14.00 Kneading for children', '16.00 Music'])}</ul>${talk('the mill')}`,
  ),
  'travel post': page(
    'Three days on the island',
    `${talk('the island')}<h2>Day 1</h2><p>We had 2 bowls of soup and half a loaf at the harbour. Then 12 km on foot.</p><h2>Day 2</h2><p>Rain. 3 cups of tea, 1 book.</p><h2>Day 3</h2><p>The ferry at 7, fish at noon.</p>`,
  ),
  poem: page(
    'Bread',
    paragraphs([
      'A cup of dusk, a spoon of rain,',
      'two hands that fold and fold again,',
      'a pinch of salt, a little heat:',
      'the whole of winter smells of wheat.',
    ]),
  ),
  'class timetable': page(
    'Courses in autumn',
    `${rows([
      ['Monday', '18.00', 'Bread for beginners', '2 places'],
      ['Tuesday', '19.00', 'Knives', '5 places'],
      ['Friday', '17.00', 'Cakes without sugar', 'full'],
    ])}<p>Bring an apron, 2 tins and 1 kg of flour.</p>`,
  ),
  'conversion table': page(
    'Cups to grams',
    `${rows([
      ['1 cup flour', '125 g'],
      ['1 cup sugar', '200 g'],
      ['1 cup butter', '227 g'],
      ['1 tbsp honey', '21 g'],
      ['1 tsp salt', '6 g'],
    ])}<p>Spoons are level.</p>${talk('kitchen scales')}`,
  ),
  'animal feed': page(
    'Feeding hens in winter',
    `${talk('hens')}<h2>A day’s feed for 10 hens</h2><p>They eat about a kilo of grain a day, and greens when there are some.</p><h2>Instructions</h2><ol>${items(['Feed in the morning.', 'Change the water twice.'])}</ol>`,
  ),
  'medicine leaflet': page(
    'Cough syrup 150 ml',
    `<h2>Ingredients</h2><ul>${items(['Thyme extract', 'Glycerol', 'Purified water'])}</ul><h2>How to take it</h2><ol>${items(['Shake the bottle.', 'Adults take a measure three times a day.', 'Stop after a week.'])}</ol><h2>Storage</h2><p>Below 25 °C.</p>`,
  ),
  'knitting pattern': page(
    'A scarf in garter stitch',
    `<h2>Materials</h2><ul>${items(['200 g of wool', '2 needles, 5 mm', '1 darning needle'])}</ul><h2>Instructions</h2><ol>${items(['Cast on 40 stitches.', 'Knit every row until the scarf is 150 cm long.', 'Cast off and weave in the ends.'])}</ol>`,
  ),
  'soap making': page(
    'Cold soap at home',
    `<h2>Ingredients</h2><ul>${items(['500 g olive oil', '65 g lye', '150 g water', '10 drops of scent'])}</ul><h2>Instructions</h2><ol>${items(['Wear gloves.', 'Add the lye to the water.', 'Stir into the oil and pour into moulds.'])}</ol>`,
  ),
};
