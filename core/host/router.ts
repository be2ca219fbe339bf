import { completeArrival, recordArrival } from '../shop/arrival/arrival.ts';
import { addBelongings, correctBelonging, tickBack, untick } from '../shop/arrival/belongings.ts';
import { addAttachment } from '../shop/attachments/add.ts';
import {
  describeAttachment,
  listAttachments,
  strikeOutAttachment,
} from '../shop/attachments/attachments.ts';
import { attachmentImage, copyToSend } from '../shop/attachments/images.ts';
import { getBench } from '../shop/bench/bench-view.ts';
import { checkGlass } from '../shop/bench/glass-checks.ts';
import { noteRemoval } from '../shop/bench/noted-removal.ts';
import { remeasure } from '../shop/bench/remeasure.ts';
import { recordSanding } from '../shop/bench/sanding.ts';
import {
  strikeOutGlassCheck,
  strikeOutRemoval,
  strikeOutTiller,
} from '../shop/bench/strike-out.ts';
import { answerSurprise } from '../shop/bench/surprise.ts';
import { takeBite } from '../shop/bench/take-bite.ts';
import { readTiller } from '../shop/bench/tiller-readings.ts';
import { editBenchPolicy, getBenchPolicy } from '../shop/bench-policy/policy.ts';
import { bowLifeOf } from '../shop/bows/bow-life.ts';
import { addBow, editBow, getBow, searchBows } from '../shop/bows/bows.ts';
import { listGeometry, recordGeometry, strikeOutGeometry } from '../shop/bows/geometry.ts';
import { addLimbSet, editLimbSet } from '../shop/bows/limb-sets.ts';
import { editCarePolicy, getCarePolicy } from '../shop/care/policy.ts';
import {
  addCarrier,
  addUsualCarriers,
  editCarrier,
  listCarriers,
} from '../shop/carriers/carriers.ts';
import { answerConsent } from '../shop/consents/answer.ts';
import { askConsent, proposeConsent } from '../shop/consents/ask.ts';
import { remindOfConsent } from '../shop/consents/remind.ts';
import { wouldVoid } from '../shop/consents/would-void.ts';
import {
  addCustomer,
  editCustomer,
  getCustomer,
  searchCustomers,
} from '../shop/customers/customers.ts';
import { recordEntry, strikeOutEntry } from '../shop/entries/entries.ts';
import { recordFinalCheck } from '../shop/final-check/record.ts';
import { findAnything } from '../shop/find/find.ts';
import { addFinding, resolveFinding } from '../shop/findings/findings.ts';
import { listAir, lookAtAir, recordAir, strikeOutAir } from '../shop/finish/air.ts';
import { discardBatch, listBatches } from '../shop/finish/batches.ts';
import { chooseFinish } from '../shop/finish/choose.ts';
import { listClocks } from '../shop/finish/list-clocks.ts';
import { mixBatch } from '../shop/finish/mix.ts';
import { planMix } from '../shop/finish/mix-plan.ts';
import { orderFinishNow } from '../shop/finish/order-finish.ts';
import { editFinishPolicy, finishPolicy } from '../shop/finish/policy.ts';
import { finishRoom } from '../shop/finish/room.ts';
import { recordGrit, strikeOutGrit } from '../shop/finish/sandings.ts';
import { lookAtSession, spray } from '../shop/finish/spray.ts';
import { strikeOutCoat } from '../shop/finish/strike-coat.ts';
import { readSurface } from '../shop/finish/surfaces.ts';
import {
  addFinishSystem,
  checkFinishSheet,
  editFinishSystem,
  listFinishSystems,
} from '../shop/finish/systems.ts';
import { editIncident, recordIncident, settleIncident } from '../shop/incidents/incidents.ts';
import { setLayout } from '../shop/inscriptions/layout.ts';
import { markingPolicy, setMarkingPolicy } from '../shop/inscriptions/policy.ts';
import { suggestLines } from '../shop/inscriptions/suggest.ts';
import { discardDraft, listDrafts, saveDraft } from '../shop/intake/drafts.ts';
import { submitIntake } from '../shop/intake/submit.ts';
import { forecastRecord } from '../shop/learned/forecast-record.ts';
import { draftMessage } from '../shop/messages/draft.ts';
import { recordMessage, saveMessageFile, strikeOutMessage } from '../shop/messages/messages.ts';
import { boardCards } from '../shop/orders/board.ts';
import { getOrder } from '../shop/orders/detail.ts';
import { cancelOrder, sendHome, takeUpAgain } from '../shop/orders/going-home.ts';
import { changeHold, holdOrder, releaseOrder, remind } from '../shop/orders/holds.ts';
import { identifyCustomer } from '../shop/orders/identify-customer.ts';
import { setLimbSet } from '../shop/orders/limb-set.ts';
import { moveOrder } from '../shop/orders/move.ts';
import { editOrder, identifyBow, setInscription } from '../shop/orders/orders.ts';
import { setHandover, setStripFirst } from '../shop/orders/reroute.ts';
import { comparePaper } from '../shop/papers/compare.ts';
import { listPapers } from '../shop/papers/issued.ts';
import { issuePaper, previewPaper } from '../shop/papers/papers.ts';
import { acceptPlan } from '../shop/plans/accept.ts';
import { getPlan, strikeOutPlan } from '../shop/plans/plans.ts';
import { reckonPlan } from '../shop/plans/reckon.ts';
import { startBlank, startFromBow, startPlan } from '../shop/plans/start.ts';
import { addPriceLine, addPriceLines, editPriceLine } from '../shop/prices/lines.ts';
import { arrangePriceLines, removePriceLine } from '../shop/prices/lines-standing.ts';
import { recordPayment, strikeOutPayment } from '../shop/prices/payments.ts';
import { editPricePolicy, getPricePolicy } from '../shop/prices/policy.ts';
import {
  addPriceService,
  addTypicalServices,
  arrangePriceServices,
  editPriceService,
  listPriceServices,
} from '../shop/prices/services.ts';
import { addReading, strikeOutReading } from '../shop/readings/readings.ts';
import { scaleChecks } from '../shop/scales/drift.ts';
import { addScale, checkScale, editScale, listScales } from '../shop/scales/scales.ts';
import { addPerson, editPerson, listPeople } from '../shop/setup/people.ts';
import { editShop, getShop, openShop } from '../shop/setup/shop.ts';
import { assessShipment } from '../shop/shipments/assess.ts';
import { editShipment, recordShipment, strikeOutShipment } from '../shop/shipments/shipments.ts';
import { addConsumable, editConsumable, noteOrdered } from '../shop/stores/consumables.ts';
import { bookBack, countLot, discardFromLot } from '../shop/stores/corrections.ts';
import { getConsumable } from '../shop/stores/detail.ts';
import { issueStock, wouldIssue } from '../shop/stores/issue.ts';
import { listGrits, listStores, shoppingList } from '../shop/stores/list.ts';
import { editLot, getLot, openLot } from '../shop/stores/lots.ts';
import { receiveLots } from '../shop/stores/receive.ts';
import { addTask, changeTask, finishTask, reopenTask } from '../shop/tasks/tasks.ts';
import { getToday } from '../shop/today/today.ts';
import { proposeUndershoot, strikeOutUndershoot } from '../shop/undershoot/undershoot.ts';
import { recentlyDone } from '../shop/undo/recent.ts';
import { undoCommand } from '../shop/undo/undo.ts';
import {
  backToBuiltIn,
  listWordings,
  previewWording,
  saveWording,
  wordingHistory,
} from '../shop/wordings/wordings.ts';
import { guarded as os } from './guard.ts';
import { backUpNow, backupsOf, problemReportOf } from './upkeep.ts';

/** Every procedure of the contract, each a line: the rooms below do the work. */
export const router = os.router({
  system: {
    status: os.system.status.handler(({ context }) => context.core.status()),
    resolve: os.system.resolve.handler(({ context, input }) =>
      context.core.resolve(input.choice, input.argument),
    ),
    openDemo: os.system.openDemo.handler(({ context }) => context.core.openDemo()),
    leaveDemo: os.system.leaveDemo.handler(({ context }) => context.core.leaveDemo()),
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
    checks: os.scales.checks.handler(({ context, input }) =>
      scaleChecks(context.signedOn(), input.id),
    ),
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
    life: os.bows.life.handler(({ context, input }) => bowLifeOf(context.signedOn(), input.id)),
    add: os.bows.add.handler(({ context, input }) => addBow(context.signedOn(), input)),
    edit: os.bows.edit.handler(({ context, input }) => editBow(context.signedOn(), input)),
  },
  bench: {
    get: os.bench.get.handler(({ context, input }) => getBench(context.signedOn(), input.orderId)),
    takeBite: os.bench.takeBite.handler(({ context, input }) =>
      takeBite(context.signedOn(), input),
    ),
    remeasure: os.bench.remeasure.handler(({ context, input }) =>
      remeasure(context.signedOn(), input),
    ),
    recordSanding: os.bench.recordSanding.handler(({ context, input }) =>
      recordSanding(context.signedOn(), input),
    ),
    answerSurprise: os.bench.answerSurprise.handler(({ context, input }) =>
      answerSurprise(context.signedOn(), input),
    ),
    noteRemoval: os.bench.noteRemoval.handler(({ context, input }) =>
      noteRemoval(context.signedOn(), input),
    ),
    checkGlass: os.bench.checkGlass.handler(({ context, input }) =>
      checkGlass(context.signedOn(), input),
    ),
    readTiller: os.bench.readTiller.handler(({ context, input }) =>
      readTiller(context.signedOn(), input),
    ),
    strikeOutRemoval: os.bench.strikeOutRemoval.handler(({ context, input }) =>
      strikeOutRemoval(context.signedOn(), input),
    ),
    strikeOutGlassCheck: os.bench.strikeOutGlassCheck.handler(({ context, input }) =>
      strikeOutGlassCheck(context.signedOn(), input),
    ),
    strikeOutTiller: os.bench.strikeOutTiller.handler(({ context, input }) =>
      strikeOutTiller(context.signedOn(), input),
    ),
  },
  limbSets: {
    add: os.limbSets.add.handler(({ context, input }) => addLimbSet(context.signedOn(), input)),
    edit: os.limbSets.edit.handler(({ context, input }) => editLimbSet(context.signedOn(), input)),
  },
  benchPolicy: {
    get: os.benchPolicy.get.handler(({ context }) => getBenchPolicy(context.signedOn())),
    edit: os.benchPolicy.edit.handler(({ context, input }) =>
      editBenchPolicy(context.signedOn(), input),
    ),
  },
  plans: {
    start: os.plans.start.handler(({ context, input }) =>
      startPlan(context.signedOn(), input.orderId),
    ),
    startFromBow: os.plans.startFromBow.handler(({ context, input }) =>
      startFromBow(context.signedOn(), input),
    ),
    startBlank: os.plans.startBlank.handler(({ context }) => startBlank(context.signedOn())),
    reckon: os.plans.reckon.handler(({ context, input, signal }) =>
      reckonPlan(context.signedOn(), input, signal),
    ),
    accept: os.plans.accept.handler(({ context, input }) => acceptPlan(context.signedOn(), input)),
    strikeOut: os.plans.strikeOut.handler(({ context, input }) =>
      strikeOutPlan(context.signedOn(), input),
    ),
    get: os.plans.get.handler(({ context, input }) => getPlan(context.signedOn(), input.id)),
  },
  learned: {
    forecastRecord: os.learned.forecastRecord.handler(({ context }) =>
      forecastRecord(context.signedOn()),
    ),
  },
  geometry: {
    list: os.geometry.list.handler(({ context, input }) =>
      listGeometry(context.signedOn(), input.bowId),
    ),
    record: os.geometry.record.handler(({ context, input }) =>
      recordGeometry(context.signedOn(), input),
    ),
    strikeOut: os.geometry.strikeOut.handler(({ context, input }) =>
      strikeOutGeometry(context.signedOn(), input),
    ),
  },
  inscriptions: {
    suggest: os.inscriptions.suggest.handler(({ context, input }) =>
      suggestLines(context.signedOn(), input),
    ),
    setLayout: os.inscriptions.setLayout.handler(({ context, input }) =>
      setLayout(context.signedOn(), input),
    ),
    policy: os.inscriptions.policy.handler(({ context }) => markingPolicy(context.signedOn().read)),
    setPolicy: os.inscriptions.setPolicy.handler(({ context, input }) =>
      setMarkingPolicy(context.signedOn(), input),
    ),
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
    identifyCustomer: os.orders.identifyCustomer.handler(({ context, input }) =>
      identifyCustomer(context.signedOn(), input),
    ),
    setLimbSet: os.orders.setLimbSet.handler(({ context, input }) =>
      setLimbSet(context.signedOn(), input),
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
    sendHome: os.orders.sendHome.handler(({ context, input }) =>
      sendHome(context.signedOn(), input),
    ),
    takeUpAgain: os.orders.takeUpAgain.handler(({ context, input }) =>
      takeUpAgain(context.signedOn(), input),
    ),
    cancel: os.orders.cancel.handler(({ context, input }) =>
      cancelOrder(context.signedOn(), input),
    ),
    changeHold: os.orders.changeHold.handler(({ context, input }) =>
      changeHold(context.signedOn(), input),
    ),
    remind: os.orders.remind.handler(({ context, input }) => remind(context.signedOn(), input)),
    hold: os.orders.hold.handler(({ context, input }) => holdOrder(context.signedOn(), input)),
    release: os.orders.release.handler(({ context, input }) =>
      releaseOrder(context.signedOn(), input),
    ),
  },
  arrival: {
    record: os.arrival.record.handler(({ context, input }) =>
      recordArrival(context.signedOn(), input),
    ),
    addBelongings: os.arrival.addBelongings.handler(({ context, input }) =>
      addBelongings(context.signedOn(), input),
    ),
    correctBelonging: os.arrival.correctBelonging.handler(({ context, input }) =>
      correctBelonging(context.signedOn(), input),
    ),
    tickBack: os.arrival.tickBack.handler(({ context, input }) =>
      tickBack(context.signedOn(), input),
    ),
    untick: os.arrival.untick.handler(({ context, input }) => untick(context.signedOn(), input)),
    complete: os.arrival.complete.handler(({ context, input }) =>
      completeArrival(context.signedOn(), input),
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
  attachments: {
    add: os.attachments.add.handler(({ context, input }) =>
      addAttachment(context.signedOn(), input),
    ),
    list: os.attachments.list.handler(({ context, input }) =>
      listAttachments(context.signedOn(), input),
    ),
    image: os.attachments.image.handler(({ context, input }) =>
      attachmentImage(context.signedOn(), input),
    ),
    copyToSend: os.attachments.copyToSend.handler(({ context, input }) =>
      copyToSend(context.signedOn(), input),
    ),
    describe: os.attachments.describe.handler(({ context, input }) =>
      describeAttachment(context.signedOn(), input),
    ),
    strikeOut: os.attachments.strikeOut.handler(({ context, input }) =>
      strikeOutAttachment(context.signedOn(), input),
    ),
  },
  incidents: {
    record: os.incidents.record.handler(({ context, input }) =>
      recordIncident(context.signedOn(), input),
    ),
    edit: os.incidents.edit.handler(({ context, input }) =>
      editIncident(context.signedOn(), input),
    ),
    settle: os.incidents.settle.handler(({ context, input }) =>
      settleIncident(context.signedOn(), input),
    ),
  },
  undershoot: {
    propose: os.undershoot.propose.handler(({ context, input }) =>
      proposeUndershoot(context.signedOn(), input),
    ),
    strikeOut: os.undershoot.strikeOut.handler(({ context, input }) =>
      strikeOutUndershoot(context.signedOn(), input),
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
    remind: os.consents.remind.handler(({ context, input }) =>
      remindOfConsent(context.signedOn(), input),
    ),
    wouldVoid: os.consents.wouldVoid.handler(({ context, input }) =>
      wouldVoid(context.signedOn(), input),
    ),
  },
  wordings: {
    list: os.wordings.list.handler(({ context }) => listWordings(context.signedOn())),
    history: os.wordings.history.handler(({ context, input }) =>
      wordingHistory(context.signedOn(), input),
    ),
    preview: os.wordings.preview.handler(({ input }) => previewWording(input)),
    save: os.wordings.save.handler(({ context, input }) => saveWording(context.signedOn(), input)),
    backToBuiltIn: os.wordings.backToBuiltIn.handler(({ context, input }) =>
      backToBuiltIn(context.signedOn(), input),
    ),
  },
  messages: {
    draft: os.messages.draft.handler(({ context, input }) =>
      draftMessage(context.signedOn(), input),
    ),
    record: os.messages.record.handler(({ context, input }) =>
      recordMessage(context.signedOn(), input),
    ),
    saveFile: os.messages.saveFile.handler(({ context, input }) =>
      saveMessageFile(context.signedOn(), input),
    ),
    strikeOut: os.messages.strikeOut.handler(({ context, input }) =>
      strikeOutMessage(context.signedOn(), input),
    ),
  },
  finalCheck: {
    record: os.finalCheck.record.handler(({ context, input }) =>
      recordFinalCheck(context.signedOn(), input),
    ),
  },
  care: {
    policy: os.care.policy.handler(({ context }) => getCarePolicy(context.signedOn())),
    editPolicy: os.care.editPolicy.handler(({ context, input }) =>
      editCarePolicy(context.signedOn(), input),
    ),
  },
  carriers: {
    list: os.carriers.list.handler(({ context }) => listCarriers(context.signedOn())),
    add: os.carriers.add.handler(({ context, input }) => addCarrier(context.signedOn(), input)),
    edit: os.carriers.edit.handler(({ context, input }) => editCarrier(context.signedOn(), input)),
    addUsual: os.carriers.addUsual.handler(({ context, input }) =>
      addUsualCarriers(context.signedOn(), input),
    ),
  },
  shipments: {
    record: os.shipments.record.handler(({ context, input }) =>
      recordShipment(context.signedOn(), input),
    ),
    edit: os.shipments.edit.handler(({ context, input }) =>
      editShipment(context.signedOn(), input),
    ),
    assess: os.shipments.assess.handler(({ context, input }) =>
      assessShipment(context.signedOn(), input),
    ),
    strikeOut: os.shipments.strikeOut.handler(({ context, input }) =>
      strikeOutShipment(context.signedOn(), input),
    ),
  },
  papers: {
    list: os.papers.list.handler(({ input, context }) => listPapers(context.signedOn(), input)),
    compare: os.papers.compare.handler(({ input, context }) =>
      comparePaper(context.signedOn(), input),
    ),
    preview: os.papers.preview.handler(({ context, input }) =>
      previewPaper(context.signedOn(), input),
    ),
    issue: os.papers.issue.handler(({ context, input }) => issuePaper(context.signedOn(), input)),
  },
  prices: {
    services: os.prices.services.handler(({ context }) => listPriceServices(context.signedOn())),
    addService: os.prices.addService.handler(({ context, input }) =>
      addPriceService(context.signedOn(), input),
    ),
    editService: os.prices.editService.handler(({ context, input }) =>
      editPriceService(context.signedOn(), input),
    ),
    arrangeServices: os.prices.arrangeServices.handler(({ context, input }) =>
      arrangePriceServices(context.signedOn(), input),
    ),
    addTypical: os.prices.addTypical.handler(({ context, input }) =>
      addTypicalServices(context.signedOn(), input),
    ),
    policy: os.prices.policy.handler(({ context }) => getPricePolicy(context.signedOn())),
    editPolicy: os.prices.editPolicy.handler(({ context, input }) =>
      editPricePolicy(context.signedOn(), input),
    ),
    addFromList: os.prices.addFromList.handler(({ context, input }) =>
      addPriceLines(context.signedOn(), input),
    ),
    addLine: os.prices.addLine.handler(({ context, input }) =>
      addPriceLine(context.signedOn(), input),
    ),
    editLine: os.prices.editLine.handler(({ context, input }) =>
      editPriceLine(context.signedOn(), input),
    ),
    removeLine: os.prices.removeLine.handler(({ context, input }) =>
      removePriceLine(context.signedOn(), input),
    ),
    arrangeLines: os.prices.arrangeLines.handler(({ context, input }) =>
      arrangePriceLines(context.signedOn(), input),
    ),
    recordPayment: os.prices.recordPayment.handler(({ context, input }) =>
      recordPayment(context.signedOn(), input),
    ),
    strikeOutPayment: os.prices.strikeOutPayment.handler(({ context, input }) =>
      strikeOutPayment(context.signedOn(), input),
    ),
  },
  stores: {
    list: os.stores.list.handler(({ context }) => listStores(context.signedOn())),
    get: os.stores.get.handler(({ context, input }) => getConsumable(context.signedOn(), input.id)),
    lot: os.stores.lot.handler(({ context, input }) => getLot(context.signedOn(), input.id)),
    shoppingList: os.stores.shoppingList.handler(({ context }) => shoppingList(context.signedOn())),
    grits: os.stores.grits.handler(() => listGrits()),
    wouldIssue: os.stores.wouldIssue.handler(({ context, input }) =>
      wouldIssue(context.signedOn(), input),
    ),
    addConsumable: os.stores.addConsumable.handler(({ context, input }) =>
      addConsumable(context.signedOn(), input),
    ),
    editConsumable: os.stores.editConsumable.handler(({ context, input }) =>
      editConsumable(context.signedOn(), input),
    ),
    noteOrdered: os.stores.noteOrdered.handler(({ context, input }) =>
      noteOrdered(context.signedOn(), input),
    ),
    receive: os.stores.receive.handler(({ context, input }) =>
      receiveLots(context.signedOn(), input),
    ),
    editLot: os.stores.editLot.handler(({ context, input }) => editLot(context.signedOn(), input)),
    openLot: os.stores.openLot.handler(({ context, input }) => openLot(context.signedOn(), input)),
    issue: os.stores.issue.handler(({ context, input }) => issueStock(context.signedOn(), input)),
    count: os.stores.count.handler(({ context, input }) => countLot(context.signedOn(), input)),
    discard: os.stores.discard.handler(({ context, input }) =>
      discardFromLot(context.signedOn(), input),
    ),
    bookBack: os.stores.bookBack.handler(({ context, input }) =>
      bookBack(context.signedOn(), input),
    ),
  },
  tasks: {
    add: os.tasks.add.handler(({ context, input }) => addTask(context.signedOn(), input)),
    change: os.tasks.change.handler(({ context, input }) => changeTask(context.signedOn(), input)),
    done: os.tasks.done.handler(({ context, input }) => finishTask(context.signedOn(), input)),
    reopen: os.tasks.reopen.handler(({ context, input }) => reopenTask(context.signedOn(), input)),
  },
  today: {
    get: os.today.get.handler(({ context, input }) => getToday(context.signedOn(), input.day)),
  },
  undo: {
    undo: os.undo.undo.handler(({ context, input }) => undoCommand(context.signedOn(), input)),
    recent: os.undo.recent.handler(({ context, input }) => recentlyDone(context.signedOn(), input)),
  },
  finish: {
    systems: os.finish.systems.handler(({ context, input }) =>
      listFinishSystems(context.signedOn(), input),
    ),
    checkSheet: os.finish.checkSheet.handler(({ input }) => checkFinishSheet(input)),
    addSystem: os.finish.addSystem.handler(({ context, input }) =>
      addFinishSystem(context.signedOn(), input),
    ),
    editSystem: os.finish.editSystem.handler(({ context, input }) =>
      editFinishSystem(context.signedOn(), input),
    ),
    policy: os.finish.policy.handler(({ context }) => finishPolicy(context.signedOn().read)),
    editPolicy: os.finish.editPolicy.handler(({ context, input }) =>
      editFinishPolicy(context.signedOn(), input),
    ),
    choose: os.finish.choose.handler(({ context, input }) =>
      chooseFinish(context.signedOn(), input),
    ),
    order: os.finish.order.handler(({ context, input }) =>
      orderFinishNow(context.signedOn(), input.orderId),
    ),
    lookAtAir: os.finish.lookAtAir.handler(({ context, input }) =>
      lookAtAir(context.signedOn(), input),
    ),
    recordAir: os.finish.recordAir.handler(({ context, input }) =>
      recordAir(context.signedOn(), input),
    ),
    strikeOutAir: os.finish.strikeOutAir.handler(({ context, input }) =>
      strikeOutAir(context.signedOn(), input),
    ),
    airReadings: os.finish.airReadings.handler(({ context }) => listAir(context.signedOn())),
    planMix: os.finish.planMix.handler(({ context, input }) => planMix(context.signedOn(), input)),
    mix: os.finish.mix.handler(({ context, input }) => mixBatch(context.signedOn(), input)),
    discardBatch: os.finish.discardBatch.handler(({ context, input }) =>
      discardBatch(context.signedOn(), input),
    ),
    batches: os.finish.batches.handler(({ context }) => listBatches(context.signedOn())),
    lookAtSession: os.finish.lookAtSession.handler(({ context, input }) =>
      lookAtSession(context.signedOn(), input),
    ),
    spray: os.finish.spray.handler(({ context, input }) => spray(context.signedOn(), input)),
    strikeOutCoat: os.finish.strikeOutCoat.handler(({ context, input }) =>
      strikeOutCoat(context.signedOn(), input),
    ),
    readSurface: os.finish.readSurface.handler(({ context, input }) =>
      readSurface(context.signedOn(), input),
    ),
    recordSanding: os.finish.recordSanding.handler(({ context, input }) =>
      recordGrit(context.signedOn(), input),
    ),
    strikeOutSanding: os.finish.strikeOutSanding.handler(({ context, input }) =>
      strikeOutGrit(context.signedOn(), input),
    ),
    room: os.finish.room.handler(({ context }) => finishRoom(context.signedOn())),
  },
  clocks: {
    list: os.clocks.list.handler(({ context }) => listClocks(context.signedOn())),
  },
  find: os.find.handler(({ context, input }) => findAnything(context.signedOn(), input.text)),
});
