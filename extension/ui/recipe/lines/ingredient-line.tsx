/** One line of the ingredient list; pressed, it opens what can be done with it. */
import type { Adaptation } from '../../../../engine/model.ts';
import { Icon } from '../../controls/icon.tsx';
import { say } from '../../words/say.ts';
import type { IngredientRow } from './ingredient-rows.ts';
import type { LineActions } from './line-actions.ts';
import { LinePanel } from './line-panel.tsx';

interface Props {
  row: IngredientRow;
  adaptation: Adaptation;
  actions: LineActions;
  open: boolean;
  onOpen(open: boolean): void;
}

function Was({ text, language }: { text: string; language: string | undefined }) {
  return (
    <s lang={language} dir="auto">
      <span class="hidden">{say('was')} </span>
      {text}
    </s>
  );
}

/** Amount, food and what it was; the name is what is pressed. */
function LineWords({ row, language }: { row: IngredientRow; language: string | undefined }) {
  const { now, was, line } = row;
  const lang = line.change === 'kept' || line.change === 'amount' ? language : undefined;
  if (!now) {
    return (
      <>
        <span class="line-amount soft">{say('leftOut')}</span>{' '}
        <span lang={language} dir="auto">
          <s class="line-name">{line.before}</s>
        </span>
      </>
    );
  }
  return (
    <>
      <span
        class={line.change === 'kept' ? 'line-amount' : 'line-amount new'}
        lang={lang}
        dir="auto"
      >
        {now.amount}
      </span>{' '}
      <span>
        <span class="line-name" lang={lang} dir="auto">
          {now.kind !== '' && `${now.kind} `}
          {now.name}
        </span>
        <span class="soft" lang={lang} dir="auto">
          {now.rest}
          {now.extra !== '' && ` (${now.extra})`}
        </span>{' '}
        {was && <Was text={was} language={language} />}
      </span>
    </>
  );
}

export function IngredientLine({ row, adaptation, actions, open, onOpen }: Props) {
  const language = adaptation.recipe.language ?? undefined;
  const id = `panel-${row.line.key.replace(/[^\w.-]/g, '_')}`;
  return (
    <div
      class={`${open ? 'card line-open' : ''}${row.joined ? ' joined' : ''}`}
      data-change={row.line.change}
    >
      <button
        type="button"
        class="line"
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => onOpen(!open)}
      >
        <LineWords row={row} language={language} />
        {open && <Icon name="close" />}
      </button>
      {open && (
        <div id={id} class="line-panel">
          <LinePanel row={row} adaptation={adaptation} actions={actions} />
        </div>
      )}
    </div>
  );
}
