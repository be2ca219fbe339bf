import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Link, Redirect, useSearchParams } from 'wouter';
import type { ConsumableDetail } from '../../../shared/contract/stores.ts';
import { quantityText } from '../../../shared/stores.ts';
import { orpc } from '../../api/client.ts';
import { Mark } from '../../parts/mark.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { TwoColumns } from '../../parts/two-columns.tsx';
import { PaperDialog } from '../papers/paper-dialog.tsx';
import { EditConsumable } from './consumable-form.tsx';
import { FactsPanel } from './facts-panel.tsx';
import { IssueForm } from './issue-form.tsx';
import { scannedForm } from './lot-form.ts';
import { LotsPanel, type OpenLotForm } from './lots-panel.tsx';
import { MovesPanel } from './moves-panel.tsx';
import { ReceiveForm } from './receive-form.tsx';
import { ReorderPanel } from './reorder-panel.tsx';
import { StockMarks } from './stock-marks.tsx';
import classes from './stores.module.css';

type Open =
  | { form: 'issue'; lotId: string | null; times: number }
  | { form: 'receive'; times: number }
  | OpenLotForm;

/** The form that the address asks for: a scanned label opens one on its lot. */
function askedIn(params: URLSearchParams, times: number): Open | null {
  const asked = params.get('do');
  const lotId = params.get('lot');
  if (asked === null) return null;
  if (asked === 'receive') return { form: 'receive', times };
  const form = scannedForm(asked);
  if (form === 'issue') return { form, lotId, times };
  return lotId === null ? null : { form, lotId, times };
}

type Label = { kind: 'shelf-label' | 'lot-label'; aboutId: string; number: string };

function useAsked() {
  const [params, setParams] = useSearchParams();
  const [open, setOpen] = useState<Open | null>(() => askedIn(params, 1));
  const asked = params.toString();
  // biome-ignore lint/correctness/useExhaustiveDependencies: each new address asks once.
  useEffect(() => {
    if (asked === '') return;
    setOpen((before) => askedIn(params, (before?.times ?? 0) + 1));
    // The address is used up: going back must not open the form again.
    setParams({}, { replace: true });
  }, [asked]);
  return [open, setOpen] as const;
}

function Known({ detail }: { detail: ConsumableDetail }) {
  const [open, setOpen] = useAsked();
  const [said, setSaid] = useState('');
  const [isEditing, setEditing] = useState(false);
  const [label, setLabel] = useState<Label | null>(null);
  const times = (open?.times ?? 0) + 1;
  const done = (what: string) => {
    setOpen(null);
    setSaid(what);
  };
  const ask = (next: Open) => {
    setSaid('');
    setOpen(next);
  };
  return (
    <Page title={detail.name} actions={<Link href="/stores">All stores</Link>}>
      <div className={classes.buttons} style={{ marginBottom: 16 }}>
        <span className={classes.big}>{quantityText(detail.onHand, detail.unit)}</span>
        <StockMarks marks={detail.marks} />
        <Button onClick={() => ask({ form: 'issue', lotId: null, times })}>Issue</Button>
        <Button variant="default" onClick={() => ask({ form: 'receive', times })}>
          Receive
        </Button>
      </div>
      <div role="status">{said === '' ? null : <Mark kind="done">{said}</Mark>}</div>
      {open?.form === 'issue' ? (
        <IssueForm
          key={`${open.times} ${open.lotId}`}
          detail={detail}
          lotId={open.lotId}
          times={open.times}
          onDone={done}
          onCancel={() => setOpen(null)}
        />
      ) : null}
      {open?.form === 'receive' ? (
        <ReceiveForm
          key={open.times}
          detail={detail}
          times={open.times}
          onCancel={() => setOpen(null)}
          onDone={(lotIds) =>
            done(
              `Received. ${lotIds.length === 1 ? 'Its label' : 'Their labels'} can be printed under the lot: More, Label.`,
            )
          }
        />
      ) : null}
      <TwoColumns
        left={
          <>
            <LotsPanel
              detail={detail}
              open={open === null || open.form === 'issue' || open.form === 'receive' ? null : open}
              onOpen={(form, lotId) => ask({ form, lotId, times })}
              onClose={() => setOpen(null)}
              onIssue={(lotId) => ask({ form: 'issue', lotId, times })}
              onLabel={(lot) =>
                setLabel({ kind: 'lot-label', aboutId: lot.id, number: lot.barcode })
              }
              onDone={done}
            />
            <MovesPanel detail={detail} />
          </>
        }
        right={
          <>
            <ReorderPanel detail={detail} />
            <FactsPanel
              detail={detail}
              onEdit={() => setEditing(true)}
              onLabel={() =>
                setLabel({ kind: 'shelf-label', aboutId: detail.id, number: detail.barcode })
              }
            />
          </>
        }
      />
      {isEditing ? <EditConsumable detail={detail} onClose={() => setEditing(false)} /> : null}
      {label === null ? null : (
        <PaperDialog
          kind={label.kind}
          orderId={null}
          aboutId={label.aboutId}
          number={label.number}
          onIssued={() => undefined}
          onClose={() => setLabel(null)}
        />
      )}
    </Page>
  );
}

/** One consumable: its lots, its moves, when to order it. */
export function ConsumableScreen({ id }: { id: string }) {
  const detail = useQuery(orpc.stores.get.queryOptions({ input: { id } }));
  if (detail.data !== undefined) return <Known detail={detail.data} />;
  return (
    <Page title="Stores">
      {detail.error === null ? (
        <BusyNote />
      ) : (
        <ErrorNote error={detail.error} onAgain={() => void detail.refetch()} />
      )}
    </Page>
  );
}

/** Where the label of a lot leads: to its consumable, with a form open on that lot. */
export function LotScreen({ id }: { id: string }) {
  const [params] = useSearchParams();
  const found = useQuery(orpc.stores.lot.queryOptions({ input: { id } }));
  if (found.data !== undefined) {
    const form = scannedForm(params.get('do'));
    return <Redirect to={`/stores/${found.data.consumableId}?do=${form}&lot=${id}`} replace />;
  }
  return (
    <Page title="Stores">
      {found.error === null ? (
        <BusyNote />
      ) : (
        <ErrorNote error={found.error} onAgain={() => void found.refetch()} />
      )}
    </Page>
  );
}
