import { useState } from 'react';
import type { ConsumableDetail, Lot } from '../../../shared/contract/stores.ts';
import { Fold } from '../../parts/fold.tsx';
import { EmptyNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { EditLotForm } from './edit-lot-form.tsx';
import type { LotFormProps } from './lot-amount-form.tsx';
import { BookBackForm, CountForm, DiscardForm, OpenForm } from './lot-forms.tsx';
import { type LotAction, LotItem } from './lot-item.tsx';
import classes from './stores.module.css';

const forms = {
  count: CountForm,
  open: OpenForm,
  discard: DiscardForm,
  back: BookBackForm,
  edit: EditLotForm,
} as const;

interface LotsPanelProps {
  detail: ConsumableDetail;
  onIssue: (lotId: string) => void;
  onLabel: (lot: Lot) => void;
  onDone: (said: string) => void;
}

/** The lots of one consumable in the order they are used; the form of a lot opens under it. */
export function LotsPanel({ detail, onIssue, onLabel, onDone }: LotsPanelProps) {
  const [open, setOpen] = useState<{ lotId: string; form: keyof typeof forms } | null>(null);
  const act = (lot: Lot, action: LotAction) => {
    if (action === 'issue') onIssue(lot.id);
    else if (action === 'label') onLabel(lot);
    else setOpen({ lotId: lot.id, form: action });
  };
  const show = (lots: readonly Lot[]) => (
    <ul className={classes.rows}>
      {lots.map((lot) => {
        const Form: ((props: LotFormProps) => React.ReactNode) | null =
          open?.lotId === lot.id ? forms[open.form] : null;
        return (
          <li key={lot.id}>
            <ul className={classes.rows}>
              <LotItem lot={lot} unit={detail.unit} onAct={(action) => act(lot, action)} />
            </ul>
            {Form === null ? null : (
              <Form
                key={open?.form}
                lot={lot}
                unit={detail.unit}
                onCancel={() => setOpen(null)}
                onDone={(said) => {
                  setOpen(null);
                  onDone(said);
                }}
              />
            )}
          </li>
        );
      })}
    </ul>
  );
  const holding = detail.lots.filter((lot) => lot.onHand > 0);
  const empty = detail.lots.filter((lot) => lot.onHand <= 0);
  return (
    <Panel title="Lots">
      {holding.length === 0 ? (
        <EmptyNote title="None on hand">Receive some, or count what is on the shelf.</EmptyNote>
      ) : (
        show(holding)
      )}
      {empty.length === 0 ? null : <Fold title={`Used up (${empty.length})`}>{show(empty)}</Fold>}
    </Panel>
  );
}
