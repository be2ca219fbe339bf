import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import type { OrderFinishNow } from '../../../../shared/contract/finish.ts';
import { orpc } from '../../../api/client.ts';
import { fullDay } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { Cautions } from '../../finish-room/cautions.tsx';
import { LastGrits } from '../../finish-room/sanding-inputs.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { FinishClocks } from './finish-clocks.tsx';
import { FinishForms } from './finish-forms.tsx';
import { CoatLines, SandingLines } from './finish-lines.tsx';
import { type FinishForm, formFor } from './finish-openings.ts';
import { finishState } from './finish-words.ts';

/** A window opens and shuts by time alone. */
const readAgainMs = 60_000;

function Chosen({ chosen }: { chosen: OrderFinishNow['chosen'] }) {
  if (chosen === null) return <p className={classes.quiet}>No finish chosen yet.</p>;
  const { sheet, sheetChanged, cautions } = chosen;
  return (
    <div style={{ display: 'grid', gap: 8 }}>
      <span>
        <strong>{sheet.name}</strong>, data sheet {sheet.revision} of {fullDay(sheet.datedOn)},
        chosen {fullDay(chosen.chosenAt)} by {chosen.personName}
      </span>
      {sheetChanged ? (
        <p className={classes.words}>
          <Mark kind="attention">
            The shop has a newer sheet of it. This order keeps its own until the finish is chosen
            again.
          </Mark>
        </p>
      ) : null}
      <Cautions cautions={cautions} />
    </div>
  );
}

/** What the gates ask for by the time since the last coat. */
const countsFromCoat: readonly string[] = ['string-and-flex', 'safe-to-wrap'];

interface BodyProps {
  finish: OrderFinishNow;
  form: FinishForm | null;
  times: number;
  onForm: (form: FinishForm) => void;
  onClose: () => void;
}

function Buttons({ finish, onForm }: Pick<BodyProps, 'finish' | 'onForm'>) {
  return (
    <div className={classes.buttons}>
      <Button variant="default" onClick={() => onForm('finish-system')}>
        {finish.chosen === null ? 'Choose the finish' : 'Choose the finish again'}
      </Button>
      <Button variant="default" onClick={() => onForm('last-grit')}>
        Record sanding
      </Button>
      <Button variant="default" component={Link} href="/finish-room">
        Mix and coat in the finish room
      </Button>
    </div>
  );
}

function Body({ finish, form, times, onForm, onClose }: BodyProps) {
  const { route, stage } = useOrder().order.card;
  const isPast = route.indexOf(stage) > route.indexOf('finish');
  return (
    <div style={{ display: 'grid', gap: 12, minWidth: 0 }}>
      {form === null ? (
        <Buttons finish={finish} onForm={onForm} />
      ) : (
        <FinishForms key={form} form={form} times={times} finish={finish} onClose={onClose} />
      )}
      <Chosen chosen={finish.chosen} />
      <FinishClocks finish={finish} />
      {finish.film === null ? null : <p className={classes.quiet}>{finish.film.sentence}</p>}
      <CoatLines
        coats={finish.coats}
        isMissed={isPast && finish.missing.some(({ item }) => countsFromCoat.includes(item))}
      />
      <LastGrits lastGrits={finish.lastGrits} />
      <Fold title="Sanding log" said={`${finish.sandings.length}`}>
        <SandingLines sandings={finish.sandings} />
      </Fold>
    </div>
  );
}

/** The finish log of an order: what was chosen, sanded and put on, and what its clocks say. */
export function Finish() {
  const { order, opened, close } = useOrder();
  const [form, setForm] = useState<FinishForm | null>(null);
  const finish = useQuery({
    ...orpc.finish.order.queryOptions({ input: { orderId: order.card.id } }),
    refetchInterval: readAgainMs,
  });
  const opening = opened.finish;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking opens the form once.
  useEffect(() => {
    if (opening !== undefined) setForm(formFor(opening.opens));
  }, [opening?.times]);
  if (!order.card.route.includes('finish') && finish.data?.coats.length === 0) return null;
  return (
    <OrderSection
      place="finish"
      title="Finish"
      state={finishState(finish.data)}
      isBusy={form !== null}
    >
      {finish.error === null ? null : (
        <ErrorNote error={finish.error} onAgain={() => void finish.refetch()} />
      )}
      {finish.data === undefined ? (
        finish.error === null ? (
          <BusyNote />
        ) : null
      ) : (
        <Body
          finish={finish.data}
          form={form}
          times={opening?.times ?? 1}
          onForm={setForm}
          onClose={() => {
            setForm(null);
            close('finish');
          }}
        />
      )}
    </OrderSection>
  );
}
