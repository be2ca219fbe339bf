import { Button, Menu } from '@mantine/core';
import { IconChevronDown } from '@tabler/icons-react';
import { useEffect, useState } from 'react';
import type { Paper, PaperOffer } from '../../../../shared/contract/papers.ts';
import {
  type PaperGroup,
  paperChoices,
  paperGroupOf,
  paperGroups,
  paperKind,
  paperKinds,
} from '../../../../shared/papers.ts';
import { momentText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { PaperDialog } from '../../papers/paper-dialog.tsx';
import { copyLabels, formatLabels, groupLabels } from '../../papers/paper-words.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { readOrdersAgain } from '../use-order-command.ts';

function PaperLine({ paper }: { paper: Paper }) {
  return (
    <li className={classes.item}>
      <strong>{paperChoices[paper.kind].label}</strong>, {copyLabels[paper.copy].toLowerCase()},{' '}
      {formatLabels[paper.format]}
      <p className={classes.quiet} style={{ margin: 0 }}>
        {paper.action} {momentText(paper.madeAt)}, {paper.personName}, {paper.pages}{' '}
        {paper.pages === 1 ? 'page' : 'pages'}
      </p>
      {paper.outdated ? <Mark kind="attention">outdated: the order has changed since</Mark> : null}
    </li>
  );
}

const shownFirst = 3;
const orderPapers = paperKinds.filter((kind) => paperChoices[kind].about === 'order');

function PaperLines({ papers }: { papers: readonly Paper[] }) {
  return (
    <ul className={classes.list}>
      {papers.map((paper) => (
        <PaperLine key={paper.id} paper={paper} />
      ))}
    </ul>
  );
}

interface PaperMenuProps {
  group: PaperGroup;
  onChoose: (kind: Paper['kind']) => void;
}

/** One button a group; its papers in a menu. */
function PaperMenu({ group, onChoose }: PaperMenuProps) {
  return (
    <Menu position="bottom-start">
      <Menu.Target>
        <Button variant="default" rightSection={<IconChevronDown size={18} aria-hidden="true" />}>
          {groupLabels[group]}
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        {orderPapers
          .filter((kind) => paperGroupOf(kind) === group)
          .map((kind) => (
            <Menu.Item key={kind} mih={44} onClick={() => onChoose(kind)}>
              {paperChoices[kind].label}
            </Menu.Item>
          ))}
      </Menu.Dropdown>
    </Menu>
  );
}

interface PaperOffersProps {
  offers: readonly PaperOffer[];
  onChoose: (kind: Paper['kind']) => void;
}

/** Papers this order needs besides the usual ones, until they are out. */
function PaperOffers({ offers, onChoose }: PaperOffersProps) {
  return (
    <ul className={classes.list} aria-label="Still to be printed" style={{ marginBottom: 16 }}>
      {offers.map(({ kind, why }) => (
        <li key={kind} className={classes.item}>
          <Mark kind="attention">{why}</Mark>
          <div className={classes.buttons} style={{ marginTop: 8 }}>
            <Button variant="default" onClick={() => onChoose(kind)}>
              {paperChoices[kind].label} ...
            </Button>
          </div>
        </li>
      ))}
    </ul>
  );
}

/** Papers of this order: what went out, and the way to make more. */
export function OrderPapers() {
  const { order, opened, close } = useOrder();
  const [kind, setKind] = useState<Paper['kind'] | null>(null);
  const papers = order.papers.toSorted((a, b) => b.madeAt.localeCompare(a.madeAt));
  const asked = opened.papers;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking opens the paper once.
  useEffect(() => {
    const paper = paperKind.safeParse(asked?.opens);
    if (paper.success) setKind(paper.data);
  }, [asked?.times]);
  return (
    <OrderSection place="papers" title="Papers">
      <div className={classes.buttons} style={{ marginBottom: 12 }}>
        {paperGroups.map((group) => (
          <PaperMenu key={group} group={group} onChoose={setKind} />
        ))}
      </div>
      {order.paperOffers.length === 0 ? null : (
        <PaperOffers offers={order.paperOffers} onChoose={setKind} />
      )}
      {papers.length === 0 ? (
        <p className={classes.quiet}>Nothing printed or saved yet.</p>
      ) : (
        <>
          <PaperLines papers={papers.slice(0, shownFirst)} />
          {papers.length > shownFirst ? (
            <Fold title={`Earlier papers (${papers.length - shownFirst})`}>
              <PaperLines papers={papers.slice(shownFirst)} />
            </Fold>
          ) : null}
        </>
      )}
      {kind === null ? null : (
        <PaperDialog
          key={kind}
          kind={kind}
          orderId={order.card.id}
          number={order.card.number}
          onIssued={readOrdersAgain}
          onClose={() => {
            setKind(null);
            if (asked !== undefined) close('papers');
          }}
        />
      )}
    </OrderSection>
  );
}
