/** The shapes in which pages without markup draw ingredients and method. All recipes are invented. */

/** Lines of one group; the first group of a page has no title. */
export type Part = { title: string | null; lines: readonly string[] };

const tagged = (texts: readonly string[], tag = 'li') =>
  texts.map((text) => `<${tag}>${text}</${tag}>`).join('');

type Head = 'h2' | 'h3' | 'h4' | 'bold' | 'plain' | 'named';

function head(text: string, as: Head): string {
  if (as === 'bold') return `<p><strong>${text}</strong></p>`;
  if (as === 'plain') return `<p>${text.replace(/:$/, '')}:</p>`;
  return as === 'named' ? `<div class="title">${text}</div>` : `<${as}>${text}</${as}>`;
}

const titled = ({ title }: Part, as: Head) => (title === null ? '' : head(title, as));
const each = (parts: readonly Part[], draw: (part: Part) => string) => parts.map(draw).join('');

/** Amount with unit, and the name, of a line that starts with a figure. */
const SPLIT =
  /^([\d½.,]+\s?(?:g|gram|EL|TL|tbsp|tsp|el|tl|msk|tsk|dl|spsk|ss|ts|łyżki|rkl|lžíce|dkg|ek|tk)?)\s(.*)$/;

function cells(line: string, amount: string, name: string): string {
  const found = SPLIT.exec(line);
  return found
    ? `<${amount}>${found[1]}</${amount}> <${name}>${found[2]}</${name}>`
    : `<${amount}></${amount}> <${name}>${line}</${name}>`;
}

export const LISTS: Record<string, (heading: string, parts: readonly Part[]) => string> = {
  'lists under headings': (heading, parts) =>
    head(heading, 'h2') +
    each(parts, (part) => `${titled(part, 'h3')}<ul>${tagged(part.lines)}</ul>`),
  'lists under bold lines': (heading, parts) =>
    head(heading, 'bold') +
    each(parts, (part) => `${titled(part, 'bold')}<ul>${tagged(part.lines)}</ul>`),
  'lists under plain lines': (heading, parts) =>
    head(heading, 'plain') +
    each(parts, (part) => `${titled(part, 'plain')}<ul>${tagged(part.lines)}</ul>`),
  'lines broken in one paragraph': (heading, parts) =>
    `<p><strong>${heading}</strong><br>${each(
      parts,
      (part) =>
        `${part.title ? `<br><em>${part.title}:</em><br>` : ''}${part.lines.join('<br>')}<br>`,
    )}</p>`,
  'lines broken in a paragraph a group': (heading, parts) =>
    head(heading, 'h3') +
    each(parts, (part) => `${titled(part, 'bold')}<p>${part.lines.join('<br />')}</p>`),
  paragraphs: (heading, parts) =>
    head(heading, 'h2') + each(parts, (part) => titled(part, 'bold') + tagged(part.lines, 'p')),
  divisions: (heading, parts) =>
    `${head(heading, 'named')}<div class="list">${each(parts, (part) => titled(part, 'bold') + tagged(part.lines, 'div'))}</div>`,
  table: (heading, parts) =>
    `${head(heading, 'h2')}<table>${each(
      parts,
      (part) =>
        (part.title ? `<tr><td colspan="2"><b>${part.title}</b></td></tr>` : '') +
        part.lines.map((line) => `<tr>${cells(line, 'td', 'td')}</tr>`).join(''),
    )}</table>`,
  'spans in entries': (heading, parts) =>
    head(heading, 'h2') +
    each(
      parts,
      (part) =>
        `${titled(part, 'h4')}<ul>${tagged(part.lines.map((line) => cells(line, 'span', 'span')))}</ul>`,
    ),
  'boxes to tick': (heading, parts) =>
    head(heading, 'h3') +
    each(
      parts,
      (part) =>
        `${titled(part, 'h4')}<ul>${tagged(part.lines.map((line) => `<input type="checkbox"><label>${line}</label>`))}</ul>`,
    ),
  'a list in an entry': (heading, parts) =>
    `${head(heading, 'h2')}<ul>${each(parts, (part) =>
      part.title ? `<li>${part.title}<ul>${tagged(part.lines)}</ul></li>` : tagged(part.lines),
    )}</ul>`,
  'drawn dashes': (heading, parts) =>
    `${head(heading, 'bold')}<p>${each(
      parts,
      (part) =>
        `${part.title ? `<b>${part.title}</b><br>` : ''}${part.lines.map((line) => `- ${line}<br>`).join('')}`,
    )}</p>`,
  'bold entries as headings': (heading, parts) =>
    `${head(heading, 'h3')}<ul>${each(
      parts,
      (part) => (part.title ? `<li><strong>${part.title}</strong></li>` : '') + tagged(part.lines),
    )}</ul>`,
};

export const METHODS: Record<string, (heading: string, steps: readonly string[]) => string> = {
  'ordered list': (heading, steps) => `${head(heading, 'h2')}<ol>${tagged(steps)}</ol>`,
  'paragraphs in a list': (heading, steps) =>
    `${head(heading, 'h3')}<ol>${tagged(steps.map((step) => `<p>${step}</p>`))}</ol>`,
  'plain list': (heading, steps) => `${head(heading, 'h3')}<ul>${tagged(steps)}</ul>`,
  paragraphs: (heading, steps) => head(heading, 'h2') + tagged(steps, 'p'),
  'paragraphs under a bold line': (heading, steps) => head(heading, 'bold') + tagged(steps, 'p'),
  'numbered paragraphs': (heading, steps) =>
    head(heading, 'h3') +
    tagged(
      steps.map((step, i) => `${i + 1}. ${step}`),
      'p',
    ),
  'broken lines': (heading, steps) => `<p><strong>${heading}</strong><br>${steps.join('<br>')}</p>`,
  'lines broken twice': (heading, steps) =>
    `${head(heading, 'bold')}<div>${steps.join('<br><br>')}</div>`,
  divisions: (heading, steps) => `${head(heading, 'named')}<div>${tagged(steps, 'div')}</div>`,
  'numbers as headings': (heading, steps) =>
    head(heading, 'h2') + steps.map((step, i) => `<h4>${i + 1}</h4><p>${step}</p>`).join(''),
  'pictures between': (heading, steps) =>
    head(heading, 'h2') +
    steps.map((step) => `<div class="step"><img src="s.jpg" alt="x"><p>${step}</p></div>`).join(''),
  'rows with numbers': (heading, steps) =>
    head(heading, 'h2') +
    steps
      .map((step, i) => `<div class="row"><div class="no">${i + 1}</div><div>${step}</div></div>`)
      .join(''),
};
