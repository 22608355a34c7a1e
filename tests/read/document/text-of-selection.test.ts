import { describe, expect, it } from 'vitest';
import { selectedText } from '../../../engine/read/document/text-of-selection.ts';
import { documentFrom } from '../page-file.ts';

const PAGE = `<h2>Pan loaf</h2><p>Serves <b>4</b></p>
<ul id="list"><li>300 g bread
flour</li><li style="display:none">a copy</li><li>6 g <i>salt</i></li></ul>
<ol><li>Mix.</li><li><p>Bake.</p><p>Cool.</p></li></ol>
<table><tr><td>200 g</td><td>water</td></tr></table><script>hidden()</script><button>Print</button>`;

function selecting(html: string, choose: (document: Document, selection: Selection) => void) {
  const document = documentFrom(html);
  const selection = document.getSelection() as Selection;
  choose(document, selection);
  const before = document.documentElement.outerHTML;
  const text = selectedText(document);
  expect(document.documentElement.outerHTML).toBe(before);
  return text;
}

describe('selectedText', () => {
  it('keeps lines, headings and entries, and leaves out what is not shown', () => {
    const text = selecting(PAGE, (document, selection) =>
      selection.selectAllChildren(document.body),
    );
    expect(text.split('\n')).toEqual([
      '## Pan loaf',
      'Serves 4',
      '- 300 g bread flour',
      '- 6 g salt',
      '1. Mix.',
      '2. Bake.',
      'Cool.',
      '200 g water',
    ]);
  });

  it('takes no more than the selected part of the first and last lines', () => {
    const text = selecting(PAGE, (document, selection) => {
      const [first, last] = [document.querySelector('#list li'), document.querySelector('ol li')];
      selection.setBaseAndExtent(first?.firstChild as Node, 6, last?.firstChild as Node, 3);
    });
    expect(text.split('\n')).toEqual(['- bread flour', '- 6 g salt', '1. Mix']);
  });

  it('reads a field that is being typed in', () => {
    const text = selecting('<textarea>Two eggs\nand flour</textarea>', (document) => {
      const field = document.querySelector('textarea') as HTMLTextAreaElement;
      field.focus();
      field.setSelectionRange(4, 12);
    });
    expect(text).toBe('eggs\nand');
  });

  it('gives nothing when nothing is selected', () => {
    expect(selecting(PAGE, (_, selection) => selection.removeAllRanges())).toBe('');
  });

  it('ends on a page of elements without end', () => {
    const document = documentFrom('');
    let at: Element = document.body;
    for (let depth = 0; depth < 1_500; depth += 1) at = at.appendChild(document.createElement('i'));
    document.getSelection()?.selectAllChildren(document.body);
    expect(selectedText(document)).toBe('');
  });
});
