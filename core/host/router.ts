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
import { confirmClock } from '../shop/finish/confirm-clock.ts';
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
import type { ShopContext } from '../storage/context.ts';
import { guarded as os } from './guard.ts';
import { backUpNow, backupsOf, problemReportOf } from './upkeep.ts';

/** Runs a function of a room as the person who is signed on, on the input as it came. */
function asSignedOn<Input, Output>(run: (ctx: ShopContext, input: Input) => Output) {
  return ({ context, input }: { context: { signedOn: () => ShopContext }; input: Input }): Output =>
    run(context.signedOn(), input);
}

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
    edit: os.shop.edit.handler(asSignedOn(editShop)),
  },
  people: {
    list: os.people.list.handler(({ context }) => listPeople(context.core.shop())),
    add: os.people.add.handler(asSignedOn(addPerson)),
    edit: os.people.edit.handler(asSignedOn(editPerson)),
  },
  scales: {
    checks: os.scales.checks.handler(({ context, input }) =>
      scaleChecks(context.signedOn(), input.id),
    ),
    list: os.scales.list.handler(asSignedOn(listScales)),
    add: os.scales.add.handler(asSignedOn(addScale)),
    edit: os.scales.edit.handler(asSignedOn(editScale)),
    check: os.scales.check.handler(asSignedOn(checkScale)),
  },
  customers: {
    search: os.customers.search.handler(({ context, input }) =>
      searchCustomers(context.signedOn(), input.text),
    ),
    get: os.customers.get.handler(({ context, input }) =>
      getCustomer(context.signedOn(), input.id),
    ),
    add: os.customers.add.handler(asSignedOn(addCustomer)),
    edit: os.customers.edit.handler(asSignedOn(editCustomer)),
  },
  bows: {
    search: os.bows.search.handler(({ context, input }) =>
      searchBows(context.signedOn(), input.text),
    ),
    get: os.bows.get.handler(({ context, input }) => getBow(context.signedOn(), input.id)),
    life: os.bows.life.handler(({ context, input }) => bowLifeOf(context.signedOn(), input.id)),
    add: os.bows.add.handler(asSignedOn(addBow)),
    edit: os.bows.edit.handler(asSignedOn(editBow)),
  },
  bench: {
    get: os.bench.get.handler(({ context, input }) => getBench(context.signedOn(), input.orderId)),
    takeBite: os.bench.takeBite.handler(asSignedOn(takeBite)),
    remeasure: os.bench.remeasure.handler(asSignedOn(remeasure)),
    recordSanding: os.bench.recordSanding.handler(asSignedOn(recordSanding)),
    answerSurprise: os.bench.answerSurprise.handler(asSignedOn(answerSurprise)),
    noteRemoval: os.bench.noteRemoval.handler(asSignedOn(noteRemoval)),
    checkGlass: os.bench.checkGlass.handler(asSignedOn(checkGlass)),
    readTiller: os.bench.readTiller.handler(asSignedOn(readTiller)),
    strikeOutRemoval: os.bench.strikeOutRemoval.handler(asSignedOn(strikeOutRemoval)),
    strikeOutGlassCheck: os.bench.strikeOutGlassCheck.handler(asSignedOn(strikeOutGlassCheck)),
    strikeOutTiller: os.bench.strikeOutTiller.handler(asSignedOn(strikeOutTiller)),
  },
  limbSets: {
    add: os.limbSets.add.handler(asSignedOn(addLimbSet)),
    edit: os.limbSets.edit.handler(asSignedOn(editLimbSet)),
  },
  benchPolicy: {
    get: os.benchPolicy.get.handler(asSignedOn(getBenchPolicy)),
    edit: os.benchPolicy.edit.handler(asSignedOn(editBenchPolicy)),
  },
  plans: {
    start: os.plans.start.handler(({ context, input }) =>
      startPlan(context.signedOn(), input.orderId),
    ),
    startFromBow: os.plans.startFromBow.handler(asSignedOn(startFromBow)),
    startBlank: os.plans.startBlank.handler(asSignedOn(startBlank)),
    reckon: os.plans.reckon.handler(({ context, input, signal }) =>
      reckonPlan(context.signedOn(), input, signal),
    ),
    accept: os.plans.accept.handler(asSignedOn(acceptPlan)),
    strikeOut: os.plans.strikeOut.handler(asSignedOn(strikeOutPlan)),
    get: os.plans.get.handler(({ context, input }) => getPlan(context.signedOn(), input.id)),
  },
  learned: {
    forecastRecord: os.learned.forecastRecord.handler(asSignedOn(forecastRecord)),
  },
  geometry: {
    list: os.geometry.list.handler(({ context, input }) =>
      listGeometry(context.signedOn(), input.bowId),
    ),
    record: os.geometry.record.handler(asSignedOn(recordGeometry)),
    strikeOut: os.geometry.strikeOut.handler(asSignedOn(strikeOutGeometry)),
  },
  inscriptions: {
    suggest: os.inscriptions.suggest.handler(asSignedOn(suggestLines)),
    setLayout: os.inscriptions.setLayout.handler(asSignedOn(setLayout)),
    policy: os.inscriptions.policy.handler(({ context }) => markingPolicy(context.signedOn().read)),
    setPolicy: os.inscriptions.setPolicy.handler(asSignedOn(setMarkingPolicy)),
  },
  intake: {
    drafts: os.intake.drafts.handler(asSignedOn(listDrafts)),
    saveDraft: os.intake.saveDraft.handler(asSignedOn(saveDraft)),
    discardDraft: os.intake.discardDraft.handler(({ context, input }) =>
      discardDraft(context.signedOn(), input.id),
    ),
    submit: os.intake.submit.handler(asSignedOn(submitIntake)),
  },
  orders: {
    board: os.orders.board.handler(({ context, input }) =>
      boardCards(context.signedOn(), input.includeClosed),
    ),
    get: os.orders.get.handler(({ context, input }) => getOrder(context.signedOn(), input.id)),
    edit: os.orders.edit.handler(asSignedOn(editOrder)),
    identifyBow: os.orders.identifyBow.handler(asSignedOn(identifyBow)),
    identifyCustomer: os.orders.identifyCustomer.handler(asSignedOn(identifyCustomer)),
    setLimbSet: os.orders.setLimbSet.handler(asSignedOn(setLimbSet)),
    setInscription: os.orders.setInscription.handler(asSignedOn(setInscription)),
    move: os.orders.move.handler(asSignedOn(moveOrder)),
    setStripFirst: os.orders.setStripFirst.handler(asSignedOn(setStripFirst)),
    setHandover: os.orders.setHandover.handler(asSignedOn(setHandover)),
    sendHome: os.orders.sendHome.handler(asSignedOn(sendHome)),
    takeUpAgain: os.orders.takeUpAgain.handler(asSignedOn(takeUpAgain)),
    cancel: os.orders.cancel.handler(asSignedOn(cancelOrder)),
    changeHold: os.orders.changeHold.handler(asSignedOn(changeHold)),
    remind: os.orders.remind.handler(asSignedOn(remind)),
    hold: os.orders.hold.handler(asSignedOn(holdOrder)),
    release: os.orders.release.handler(asSignedOn(releaseOrder)),
  },
  arrival: {
    record: os.arrival.record.handler(asSignedOn(recordArrival)),
    addBelongings: os.arrival.addBelongings.handler(asSignedOn(addBelongings)),
    correctBelonging: os.arrival.correctBelonging.handler(asSignedOn(correctBelonging)),
    tickBack: os.arrival.tickBack.handler(asSignedOn(tickBack)),
    untick: os.arrival.untick.handler(asSignedOn(untick)),
    complete: os.arrival.complete.handler(asSignedOn(completeArrival)),
  },
  entries: {
    record: os.entries.record.handler(asSignedOn(recordEntry)),
    strikeOut: os.entries.strikeOut.handler(asSignedOn(strikeOutEntry)),
  },
  findings: {
    add: os.findings.add.handler(asSignedOn(addFinding)),
    resolve: os.findings.resolve.handler(asSignedOn(resolveFinding)),
  },
  attachments: {
    add: os.attachments.add.handler(asSignedOn(addAttachment)),
    list: os.attachments.list.handler(asSignedOn(listAttachments)),
    image: os.attachments.image.handler(asSignedOn(attachmentImage)),
    copyToSend: os.attachments.copyToSend.handler(asSignedOn(copyToSend)),
    describe: os.attachments.describe.handler(asSignedOn(describeAttachment)),
    strikeOut: os.attachments.strikeOut.handler(asSignedOn(strikeOutAttachment)),
  },
  incidents: {
    record: os.incidents.record.handler(asSignedOn(recordIncident)),
    edit: os.incidents.edit.handler(asSignedOn(editIncident)),
    settle: os.incidents.settle.handler(asSignedOn(settleIncident)),
  },
  undershoot: {
    propose: os.undershoot.propose.handler(asSignedOn(proposeUndershoot)),
    strikeOut: os.undershoot.strikeOut.handler(asSignedOn(strikeOutUndershoot)),
  },
  readings: {
    add: os.readings.add.handler(asSignedOn(addReading)),
    strikeOut: os.readings.strikeOut.handler(asSignedOn(strikeOutReading)),
  },
  consents: {
    propose: os.consents.propose.handler(asSignedOn(proposeConsent)),
    ask: os.consents.ask.handler(asSignedOn(askConsent)),
    answer: os.consents.answer.handler(asSignedOn(answerConsent)),
    remind: os.consents.remind.handler(asSignedOn(remindOfConsent)),
    wouldVoid: os.consents.wouldVoid.handler(asSignedOn(wouldVoid)),
  },
  wordings: {
    list: os.wordings.list.handler(asSignedOn(listWordings)),
    history: os.wordings.history.handler(asSignedOn(wordingHistory)),
    preview: os.wordings.preview.handler(({ input }) => previewWording(input)),
    save: os.wordings.save.handler(asSignedOn(saveWording)),
    backToBuiltIn: os.wordings.backToBuiltIn.handler(asSignedOn(backToBuiltIn)),
  },
  messages: {
    draft: os.messages.draft.handler(asSignedOn(draftMessage)),
    record: os.messages.record.handler(asSignedOn(recordMessage)),
    saveFile: os.messages.saveFile.handler(asSignedOn(saveMessageFile)),
    strikeOut: os.messages.strikeOut.handler(asSignedOn(strikeOutMessage)),
  },
  finalCheck: {
    record: os.finalCheck.record.handler(asSignedOn(recordFinalCheck)),
  },
  care: {
    policy: os.care.policy.handler(asSignedOn(getCarePolicy)),
    editPolicy: os.care.editPolicy.handler(asSignedOn(editCarePolicy)),
  },
  carriers: {
    list: os.carriers.list.handler(asSignedOn(listCarriers)),
    add: os.carriers.add.handler(asSignedOn(addCarrier)),
    edit: os.carriers.edit.handler(asSignedOn(editCarrier)),
    addUsual: os.carriers.addUsual.handler(asSignedOn(addUsualCarriers)),
  },
  shipments: {
    record: os.shipments.record.handler(asSignedOn(recordShipment)),
    edit: os.shipments.edit.handler(asSignedOn(editShipment)),
    assess: os.shipments.assess.handler(asSignedOn(assessShipment)),
    strikeOut: os.shipments.strikeOut.handler(asSignedOn(strikeOutShipment)),
  },
  papers: {
    list: os.papers.list.handler(asSignedOn(listPapers)),
    compare: os.papers.compare.handler(asSignedOn(comparePaper)),
    preview: os.papers.preview.handler(asSignedOn(previewPaper)),
    issue: os.papers.issue.handler(asSignedOn(issuePaper)),
  },
  prices: {
    services: os.prices.services.handler(asSignedOn(listPriceServices)),
    addService: os.prices.addService.handler(asSignedOn(addPriceService)),
    editService: os.prices.editService.handler(asSignedOn(editPriceService)),
    arrangeServices: os.prices.arrangeServices.handler(asSignedOn(arrangePriceServices)),
    addTypical: os.prices.addTypical.handler(asSignedOn(addTypicalServices)),
    policy: os.prices.policy.handler(asSignedOn(getPricePolicy)),
    editPolicy: os.prices.editPolicy.handler(asSignedOn(editPricePolicy)),
    addFromList: os.prices.addFromList.handler(asSignedOn(addPriceLines)),
    addLine: os.prices.addLine.handler(asSignedOn(addPriceLine)),
    editLine: os.prices.editLine.handler(asSignedOn(editPriceLine)),
    removeLine: os.prices.removeLine.handler(asSignedOn(removePriceLine)),
    arrangeLines: os.prices.arrangeLines.handler(asSignedOn(arrangePriceLines)),
    recordPayment: os.prices.recordPayment.handler(asSignedOn(recordPayment)),
    strikeOutPayment: os.prices.strikeOutPayment.handler(asSignedOn(strikeOutPayment)),
  },
  stores: {
    list: os.stores.list.handler(asSignedOn(listStores)),
    get: os.stores.get.handler(({ context, input }) => getConsumable(context.signedOn(), input.id)),
    lot: os.stores.lot.handler(({ context, input }) => getLot(context.signedOn(), input.id)),
    shoppingList: os.stores.shoppingList.handler(asSignedOn(shoppingList)),
    grits: os.stores.grits.handler(() => listGrits()),
    wouldIssue: os.stores.wouldIssue.handler(asSignedOn(wouldIssue)),
    addConsumable: os.stores.addConsumable.handler(asSignedOn(addConsumable)),
    editConsumable: os.stores.editConsumable.handler(asSignedOn(editConsumable)),
    noteOrdered: os.stores.noteOrdered.handler(asSignedOn(noteOrdered)),
    receive: os.stores.receive.handler(asSignedOn(receiveLots)),
    editLot: os.stores.editLot.handler(asSignedOn(editLot)),
    openLot: os.stores.openLot.handler(asSignedOn(openLot)),
    issue: os.stores.issue.handler(asSignedOn(issueStock)),
    count: os.stores.count.handler(asSignedOn(countLot)),
    discard: os.stores.discard.handler(asSignedOn(discardFromLot)),
    bookBack: os.stores.bookBack.handler(asSignedOn(bookBack)),
  },
  tasks: {
    add: os.tasks.add.handler(asSignedOn(addTask)),
    change: os.tasks.change.handler(asSignedOn(changeTask)),
    done: os.tasks.done.handler(asSignedOn(finishTask)),
    reopen: os.tasks.reopen.handler(asSignedOn(reopenTask)),
  },
  today: {
    get: os.today.get.handler(({ context, input }) => getToday(context.signedOn(), input.day)),
  },
  undo: {
    undo: os.undo.undo.handler(asSignedOn(undoCommand)),
    recent: os.undo.recent.handler(asSignedOn(recentlyDone)),
  },
  finish: {
    systems: os.finish.systems.handler(asSignedOn(listFinishSystems)),
    checkSheet: os.finish.checkSheet.handler(({ input }) => checkFinishSheet(input)),
    addSystem: os.finish.addSystem.handler(asSignedOn(addFinishSystem)),
    editSystem: os.finish.editSystem.handler(asSignedOn(editFinishSystem)),
    policy: os.finish.policy.handler(({ context }) => finishPolicy(context.signedOn().read)),
    editPolicy: os.finish.editPolicy.handler(asSignedOn(editFinishPolicy)),
    choose: os.finish.choose.handler(asSignedOn(chooseFinish)),
    order: os.finish.order.handler(({ context, input }) =>
      orderFinishNow(context.signedOn(), input.orderId),
    ),
    lookAtAir: os.finish.lookAtAir.handler(asSignedOn(lookAtAir)),
    recordAir: os.finish.recordAir.handler(asSignedOn(recordAir)),
    strikeOutAir: os.finish.strikeOutAir.handler(asSignedOn(strikeOutAir)),
    airReadings: os.finish.airReadings.handler(asSignedOn(listAir)),
    planMix: os.finish.planMix.handler(asSignedOn(planMix)),
    mix: os.finish.mix.handler(asSignedOn(mixBatch)),
    discardBatch: os.finish.discardBatch.handler(asSignedOn(discardBatch)),
    batches: os.finish.batches.handler(asSignedOn(listBatches)),
    lookAtSession: os.finish.lookAtSession.handler(asSignedOn(lookAtSession)),
    spray: os.finish.spray.handler(asSignedOn(spray)),
    strikeOutCoat: os.finish.strikeOutCoat.handler(asSignedOn(strikeOutCoat)),
    readSurface: os.finish.readSurface.handler(asSignedOn(readSurface)),
    recordSanding: os.finish.recordSanding.handler(asSignedOn(recordGrit)),
    strikeOutSanding: os.finish.strikeOutSanding.handler(asSignedOn(strikeOutGrit)),
    room: os.finish.room.handler(asSignedOn(finishRoom)),
  },
  clocks: {
    list: os.clocks.list.handler(asSignedOn(listClocks)),
    confirm: os.clocks.confirm.handler(asSignedOn(confirmClock)),
  },
  find: os.find.handler(({ context, input }) => findAnything(context.signedOn(), input.text)),
});
