/** What a page says of itself as a whole: address, language, title, author, picture. */

import { titlesAgree } from '../merge-drafts.ts';
import { webAddress } from '../values/web-address.ts';
import type { Block } from './block.ts';
import { cleanText, textKey } from './clean-text.ts';
import { textOf } from './element-text.ts';
import { attribute, type Tree } from './tree.ts';

/** What is known of the page as a whole. */
export type PageFacts = {
  url: string | null;
  language: string | null;
  title: string | null;
  author: string | null;
  image: string | null;
};

/** The facts of a page that says nothing of itself. */
export function noFacts(url: string | null): PageFacts {
  return { url: webAddress(url, null), language: null, title: null, author: null, image: null };
}

/** Words before an author's name. */
const BY =
  /^(?:(?:written |posted |published |recipe |a recipe )?by|von|par|por|door|di|av|af)[\s:]+/i;
/** A name: two to four words that start with capitals. */
const NAME =
  /^\p{Lu}[\p{L}.'’-]*(?:\s(?:(?:de|da|di|van|von|der|den|la|le|du|of|y)\s)*\p{Lu}[\p{L}.'’-]*){0,3}$/u;
/** Blocks below the main heading in which a line 'By ...' may stand. */
const BYLINE_REACH = 12;

/** The name in a line 'By ...' below the main heading; null when there is none. */
function byline(blocks: readonly Block[]): string | null {
  const title = blocks.findIndex((block) => block.level === 1 && !block.aside);
  for (const block of blocks.slice(title + 1, title + 1 + BYLINE_REACH)) {
    if (block.text.length > 80 || !BY.test(block.text)) continue;
    const name = block.text.replace(BY, '').split(/\s*[|•·,–—]\s*|\s(?:on|am|le|el|op)\s/)[0] ?? '';
    if (NAME.test(name)) return name;
  }
  return null;
}

/** What parts the dish from the site in a page's title. */
const SITE_SEPARATOR = /\s[|–—»·]\s|\s-\s/;
const SITE_SEPARATOR_OR_COLON = new RegExp(`${SITE_SEPARATOR.source}|:\\s`);

/**
 * The page's title: the main heading that agrees with the document's title, but not the site's name or a
 * link home while another heading agrees; else the first part of the document's title.
 */
function titleOf(blocks: readonly Block[], stated: string, site: string | null): string | null {
  const near = blocks.filter((block) => block.level > 0 && !block.aside);
  const main = near.filter(
    (block) => block.level === 1 && textKey(block.text) !== textKey(site ?? ''),
  );
  const agree = (block: Block) => titlesAgree(block.text, stated);
  const parts = new Set(stated.split(SITE_SEPARATOR_OR_COLON).map(textKey));
  const isPart = (block: Block) => parts.has(textKey(block.text));
  const found =
    main.find((block) => agree(block) && !block.link) ??
    (main.every((block) => block.link)
      ? near.find((block) => block.level === 2 && isPart(block))
      : undefined) ??
    main.find(agree) ??
    main[0];
  const first = stated.split(SITE_SEPARATOR)[0]?.trim() ?? '';
  return found?.text ?? (first === '' ? null : first);
}

/** The page's address, language, title, author and picture, from its head and around its main heading. */
export function pageFactsOf(tree: Tree, blocks: readonly Block[], url: string | null): PageFacts {
  const facts = { ...noFacts(url), language: attribute(tree.root, 'lang') || null };
  let canonical: string | null = null;
  let documentTitle: string | null = null;
  let shared: string | null = null;
  let signed: string | null = null;
  let site: string | null = null;
  for (const node of tree.about) {
    if (node.tag === 'link' && /(?:^|\s)canonical(?:\s|$)/i.test(attribute(node, 'rel')))
      canonical ??= attribute(node, 'href');
    else if (node.tag === 'link' && attribute(node, 'rel').toLowerCase() === 'image_src')
      facts.image ??= attribute(node, 'href');
    else if (node.tag === 'a') signed ??= textOf(node).replace(BY, '');
    else if (node.tag === 'title' && documentTitle === null && node.parent?.tag === 'head')
      documentTitle = cleanText(node.kids.map((kid) => kid.text).join(''));
    else if (node.tag === 'meta') {
      const name = (attribute(node, 'property') || attribute(node, 'name')).toLowerCase();
      if (name === 'og:title') shared ??= cleanText(attribute(node, 'content'));
      else if (/^(?:og|twitter):image(?::src)?$/.test(name))
        facts.image ??= attribute(node, 'content');
      else if (name === 'og:site_name') site ??= cleanText(attribute(node, 'content'));
      else if (name === 'author') facts.author ??= cleanText(attribute(node, 'content'));
    }
  }
  facts.url = webAddress(canonical, url) ?? webAddress(url, null);
  facts.author = [facts.author, signed, byline(blocks)].find((name) => name) ?? null;
  facts.title = titleOf(blocks, shared || documentTitle || '', site);
  return facts;
}
