import type { ConsumableDetail, Lot } from '../../../shared/contract/stores.ts';
import { Fold } from '../../parts/fold.tsx';
import { EmptyNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { EditLotForm } from './edit-lot-form.tsx';
import type { LotFormProps } from './lot-amount-form.tsx';
import type { LotForm } from './lot-form.ts';
import { BookBackForm, CountForm, DiscardForm, OpenForm } from './lot-forms.tsx';
import { type LotAction, LotItem } from './lot-item.tsx';
import classes from './stores.module.css';

const forms: Readonly<Record<LotForm, (props: LotFormProps) => React.ReactNode>> = {
  count: CountForm,
  open: OpenForm,
  discard: DiscardForm,
  back: BookBackForm,
  edit: EditLotForm,
};

/** A form that stands under its lot. */
export interface OpenLotForm {
  form: LotForm;
  lotId: string;
  times: number;
}

interface LotsPanelProps {
  detail: ConsumableDetail;
  open: OpenLotForm | null;
  onOpen: (form: LotForm, lotId: string) => void;
  onClose: () => void;
  onIssue: (lotId: string) => void;
  onLabel: (lot: Lot) => void;
  onDone: (said: string) => void;
}

/** The lots of one consumable in the order they are used; the form of a lot opens under it. */
export function LotsPanel(props: LotsPanelProps) {
  const { detail, open, onOpen, onClose, onIssue, onLabel, onDone } = props;
  const act = (lot: Lot, action: LotAction) => {
    if (action === 'issue') onIssue(lot.id);
    else if (action === 'label') onLabel(lot);
    else onOpen(action, lot.id);
  };
  const show = (lots: readonly Lot[]) => (
    <ul className={classes.rows}>
      {lots.map((lot) => {
        const Form = open?.lotId === lot.id ? forms[open.form] : null;
        return (
          <li key={lot.id}>
            <ul className={classes.rows}>
              <LotItem lot={lot} unit={detail.unit} onAct={(action) => act(lot, action)} />
            </ul>
            {Form === null ? null : (
              <Form
                key={`${open?.form} ${open?.times}`}
                lot={lot}
                unit={detail.unit}
                onCancel={onClose}
                onDone={onDone}
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
      {empty.length === 0 ? null : (
        <Fold
          title={`Used up (${empty.length})`}
          startsOpen={empty.some((lot) => lot.id === open?.lotId)}
        >
          {show(empty)}
        </Fold>
      )}
    </Panel>
  );
}
