/** Joins lists that were put into a sentence with the words around them. */

/** Marks around a list that was put in, so that it can be joined with the words beside it. */
const OPEN = '\u2060';
const CLOSE = '\u2061';

/** A list to be joined with its neighbours by {@link joined}. */
export const asList = (text: string): string => `${OPEN}${text}${CLOSE}`;

/** Words that begin what is to be done next, so that a list before them is at its end. */
const VERBS = [
  'then|add|allow|arrange|assemble|bake|beat|blend|blitz|boil|bring|broil|brown|brush|caramelise|caramelize',
  'chill|coat|combine|continue|cook|cool|cover|crimp|crumble|crush|cut|decorate|dip|discard|dissolve|divide',
  'drain|dredge|drizzle|drop|dust|fill|finish|flip|fold|form|fry|garnish|gently|glaze|gradually|grate|grease',
  'grill|heat|keep|knead|ladle|layer|leave|let|lift|line|loosen|mash|melt|mix|pack|peel|pinch|pipe|place|pour',
  'press|process|prove|proof|pulse|puree|push|put|reduce|remove|repeat|reserve|rest|return|rinse|rise|roast',
  'roll|rub|saut[eé]|scatter|score|scrape|seal|sear|season|serve|set|shake|shape|sift|simmer|skim|slash|slice|slowly',
  'soak|soften|spoon|spread|sprinkle|start|steam|stir|strain|stuff|swirl|taste|temper|thicken|thin|toast|top',
  'torch|toss|transfer|trim|turn|warm|wash|whip|whisk|work|wrap',
].join('|');
const GOES_ON = `(?= and (?!(?:${VERBS})\\b)|, (?!(?:and )?(?:then )?(?:${VERBS})\\b)(?:[^.,;]+, )*(?:[^.,;]+ )?and (?!(?:${VERBS})\\b))`;
const LISTED = new RegExp(`\u2060([^\u2060\u2061]*) and ([^\u2061]*)\u2061${GOES_ON}`, 'g');

/** 'a and [b and c]' -> 'a, b and c'; '[a and b] and c' -> 'a, b and c'; 'the [70 g a]' -> '70 g a'. */
export const joined = (text: string): string =>
  text
    .replace(/\bthe \u2060(?=\d)/gi, '\u2060')
    .replace(LISTED, '\u2060$1, $2\u2061')
    .replace(
      /,? and ((?:the )?(?:(?:warm|lukewarm|cold|hot|boiling|melted|softened|soft|fresh|chilled) )?)\u2060(?=[^\u2061]*(?: and |, ))/g,
      ', $1\u2060',
    )
    .replace(/[\u2060\u2061]/g, '');
