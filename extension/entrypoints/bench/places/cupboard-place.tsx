/** What is in the user's kitchen: foods at home, packages, sweeteners liked, and what is never used. */
import { foodTable } from '../../../../engine/index.ts';
import { Fold } from '../../../ui/controls/fold.tsx';
import { AtHome } from '../../../ui/cupboard/at-home.tsx';
import { NeverUsed } from '../../../ui/cupboard/never-used.tsx';
import { SweetenerOrder } from '../../../ui/cupboard/sweetener-order.tsx';
import { TypicalGoods } from '../../../ui/cupboard/typical-goods.tsx';
import { NamesList } from '../../../ui/packages/names-list.tsx';
import { say } from '../../../ui/words/say.ts';
import type { PlaceProps } from '../kitchen.ts';
import { Packages } from './packages-part.tsx';
import '../../../ui/styles/cupboard.css';

export function CupboardPlace({ kitchen }: PlaceProps) {
  const { pantry, own, preferences, prefer } = kitchen;
  const table = foodTable(own.foods);
  const never = new Set(preferences.never.map(({ foodId }) => foodId));
  return (
    <section class="place cupboard">
      <h1>{say('placeCupboard')}</h1>
      <AtHome pantry={pantry} table={table} />
      <Fold title={say('typicalGoods')} name="typical" open={pantry.foods.length === 0}>
        {() => <TypicalGoods pantry={pantry} table={table} never={never} />}
      </Fold>
      <Packages store={kitchen.store} own={own} onChanged={kitchen.setOwn} />
      <SweetenerOrder
        liked={preferences.sweeteners}
        table={table}
        onLiked={(sweeteners) => prefer({ sweeteners })}
      />
      <NeverUsed
        never={preferences.never}
        table={table}
        onNever={(foods) => prefer({ never: foods })}
      />
      <NamesList names={kitchen.names} />
    </section>
  );
}
