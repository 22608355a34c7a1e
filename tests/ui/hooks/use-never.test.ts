import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import type { Preferences } from '../../../extension/store/prefs.ts';
import { useNever } from '../../../extension/ui/hooks/use-never.ts';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

/** A recipe with steps of excluded foods, beside the list. */
function kitchen(start: Preferences['never'] = []) {
  let never = start;
  let excluded: string[] = [];
  let put: ReturnType<typeof useNever> = () => {};
  const onNever = (next: Preferences['never']) => {
    never = next;
  };
  const Page = (props: { excluded: string[]; never: Preferences['never'] }) => {
    put = useNever(props.excluded, { never: props.never, onNever });
    return null;
  };
  const page = () => h(Page, { excluded, never });
  screen = drawn(page());
  const draw = () => screen?.draw(page());
  return {
    names: () => never.map(({ foodName }) => foodName),
    neverUse: (id: string) => {
      void act(() => put({ id, name: id }));
      excluded = [...excluded, id];
      draw();
      draw();
    },
    show: (next: string[]) => {
      excluded = next;
      draw();
      draw();
    },
    allow: (id: string) => {
      never = never.filter(({ foodId }) => foodId !== id);
      draw();
    },
  };
}

it('an undone step takes the food off the list, and redone puts it on again', () => {
  const cook = kitchen();
  cook.neverUse('inulin');
  cook.neverUse('psyllium');
  expect(cook.names()).toEqual(['inulin', 'psyllium']);
  cook.show(['inulin']);
  expect(cook.names()).toEqual(['inulin']);
  cook.show([]);
  expect(cook.names()).toEqual([]);
  cook.show(['inulin']);
  expect(cook.names()).toEqual(['inulin']);
});

it('what was on the list before stays, and what was allowed since is not put back by another step', () => {
  const cook = kitchen([{ foodId: 'inulin', foodName: 'inulin' }]);
  cook.neverUse('inulin');
  cook.show([]);
  expect(cook.names()).toEqual(['inulin']);
  cook.neverUse('psyllium');
  cook.allow('psyllium');
  cook.show(['psyllium', 'oat-fibre']);
  expect(cook.names()).toEqual(['inulin']);
});
