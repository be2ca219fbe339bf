import { addBow, editBow, getBow, searchBows } from '../shop/bows/bows.ts';
import { answerConsent, askConsent, proposeConsent } from '../shop/consents/consents.ts';
import {
  addCustomer,
  editCustomer,
  getCustomer,
  searchCustomers,
} from '../shop/customers/customers.ts';
import { recordEntry, strikeOutEntry } from '../shop/entries/entries.ts';
import { findAnything } from '../shop/find/find.ts';
import { addFinding, resolveFinding } from '../shop/findings/findings.ts';
import { discardDraft, listDrafts, saveDraft } from '../shop/intake/drafts.ts';
import { submitIntake } from '../shop/intake/submit.ts';
import { boardCards } from '../shop/orders/board.ts';
import { getOrder } from '../shop/orders/detail.ts';
import { holdOrder, releaseOrder } from '../shop/orders/holds.ts';
import { moveOrder } from '../shop/orders/move.ts';
import {
  editOrder,
  identifyBow,
  setHandover,
  setInscription,
  setStripFirst,
} from '../shop/orders/orders.ts';
import { issuePaper, previewPaper } from '../shop/papers/papers.ts';
import { addReading, strikeOutReading } from '../shop/readings/readings.ts';
import { addScale, checkScale, editScale, listScales } from '../shop/scales/scales.ts';
import { addPerson, editPerson, listPeople } from '../shop/setup/people.ts';
import { editShop, getShop, openShop } from '../shop/setup/shop.ts';
import { guarded as os } from './guard.ts';
import { backUpNow, backupsOf, problemReportOf } from './upkeep.ts';

/** Every procedure of the contract, each a line: the rooms below do the work. */
export const router = os.router({
  system: {
    status: os.system.status.handler(({ context }) => context.core.status()),
    resolve: os.system.resolve.handler(({ context, input }) =>
      context.core.resolve(input.choice, input.argument),
    ),
    changes: os.system.changes.handler(({ context, signal }) =>
      context.core.changes.subscribe('change', signal === undefined ? {} : { signal }),
    ),
    backups: os.system.backups.handler(({ context }) => backupsOf(context.core)),
    backUpNow: os.system.backUpNow.handler(({ context }) => backUpNow(context.core)),
    problemReport: os.system.problemReport.handler(({ context }) => problemReportOf(context.core)),
  },
  setup: {
    openShop: os.setup.openShop.handler(({ context, input }) =>
      openShop(context.core.shop(), context.device, input),
    ),
  },
  shop: {
    get: os.shop.get.handler(({ context }) => getShop(context.core.shop())),
    edit: os.shop.edit.handler(({ context, input }) => editShop(context.signedOn(), input)),
  },
  people: {
    list: os.people.list.handler(({ context }) => listPeople(context.core.shop())),
    add: os.people.add.handler(({ context, input }) => addPerson(context.signedOn(), input)),
    edit: os.people.edit.handler(({ context, input }) => editPerson(context.signedOn(), input)),
  },
  scales: {
    list: os.scales.list.handler(({ context }) => listScales(context.signedOn())),
    add: os.scales.add.handler(({ context, input }) => addScale(context.signedOn(), input)),
    edit: os.scales.edit.handler(({ context, input }) => editScale(context.signedOn(), input)),
    check: os.scales.check.handler(({ context, input }) => checkScale(context.signedOn(), input)),
  },
  customers: {
    search: os.customers.search.handler(({ context, input }) =>
      searchCustomers(context.signedOn(), input.text),
    ),
    get: os.customers.get.handler(({ context, input }) =>
      getCustomer(context.signedOn(), input.id),
    ),
    add: os.customers.add.handler(({ context, input }) => addCustomer(context.signedOn(), input)),
    edit: os.customers.edit.handler(({ context, input }) =>
      editCustomer(context.signedOn(), input),
    ),
  },
  bows: {
    search: os.bows.search.handler(({ context, input }) =>
      searchBows(context.signedOn(), input.text),
    ),
    get: os.bows.get.handler(({ context, input }) => getBow(context.signedOn(), input.id)),
    add: os.bows.add.handler(({ context, input }) => addBow(context.signedOn(), input)),
    edit: os.bows.edit.handler(({ context, input }) => editBow(context.signedOn(), input)),
  },
  intake: {
    drafts: os.intake.drafts.handler(({ context }) => listDrafts(context.signedOn())),
    saveDraft: os.intake.saveDraft.handler(({ context, input }) =>
      saveDraft(context.signedOn(), input),
    ),
    discardDraft: os.intake.discardDraft.handler(({ context, input }) =>
      discardDraft(context.signedOn(), input.id),
    ),
    submit: os.intake.submit.handler(({ context, input }) =>
      submitIntake(context.signedOn(), input),
    ),
  },
  orders: {
    board: os.orders.board.handler(({ context, input }) =>
      boardCards(context.signedOn(), input.includeClosed),
    ),
    get: os.orders.get.handler(({ context, input }) => getOrder(context.signedOn(), input.id)),
    edit: os.orders.edit.handler(({ context, input }) => editOrder(context.signedOn(), input)),
    identifyBow: os.orders.identifyBow.handler(({ context, input }) =>
      identifyBow(context.signedOn(), input),
    ),
    setInscription: os.orders.setInscription.handler(({ context, input }) =>
      setInscription(context.signedOn(), input),
    ),
    move: os.orders.move.handler(({ context, input }) => moveOrder(context.signedOn(), input)),
    setStripFirst: os.orders.setStripFirst.handler(({ context, input }) =>
      setStripFirst(context.signedOn(), input),
    ),
    setHandover: os.orders.setHandover.handler(({ context, input }) =>
      setHandover(context.signedOn(), input),
    ),
    hold: os.orders.hold.handler(({ context, input }) => holdOrder(context.signedOn(), input)),
    release: os.orders.release.handler(({ context, input }) =>
      releaseOrder(context.signedOn(), input),
    ),
  },
  entries: {
    record: os.entries.record.handler(({ context, input }) =>
      recordEntry(context.signedOn(), input),
    ),
    strikeOut: os.entries.strikeOut.handler(({ context, input }) =>
      strikeOutEntry(context.signedOn(), input),
    ),
  },
  findings: {
    add: os.findings.add.handler(({ context, input }) => addFinding(context.signedOn(), input)),
    resolve: os.findings.resolve.handler(({ context, input }) =>
      resolveFinding(context.signedOn(), input),
    ),
  },
  readings: {
    add: os.readings.add.handler(({ context, input }) => addReading(context.signedOn(), input)),
    strikeOut: os.readings.strikeOut.handler(({ context, input }) =>
      strikeOutReading(context.signedOn(), input),
    ),
  },
  consents: {
    propose: os.consents.propose.handler(({ context, input }) =>
      proposeConsent(context.signedOn(), input),
    ),
    ask: os.consents.ask.handler(({ context, input }) => askConsent(context.signedOn(), input)),
    answer: os.consents.answer.handler(({ context, input }) =>
      answerConsent(context.signedOn(), input),
    ),
  },
  papers: {
    preview: os.papers.preview.handler(({ context, input }) =>
      previewPaper(context.signedOn(), input),
    ),
    issue: os.papers.issue.handler(({ context, input }) => issuePaper(context.signedOn(), input)),
  },
  find: os.find.handler(({ context, input }) => findAnything(context.signedOn(), input.text)),
});
