import { asked } from './asked.ts';
import { addCar, addCarInput } from './car/add.ts';
import { changeCar, changeCarInput } from './car/change.ts';
import { carLastValues, carLastValuesInput } from './car/last-values.ts';
import { carView, carViewInput } from './car/view.ts';
import { dueListInput, listDue } from './due/list.ts';
import { amendEntry, amendEntryInput } from './entry/amend.ts';
import { entryHistory, entryHistoryInput } from './entry/history.ts';
import { entryOne, entryOneInput } from './entry/one.ts';
import { recordEntry, recordEntryInput } from './entry/record.ts';
import { removeEntry, removeEntryInput } from './entry/remove.ts';
import { entryRevisions, entryRevisionsInput } from './entry/revisions.ts';
import { entrySome, entrySomeInput } from './entry/some.ts';
import { acceptNeed, acceptNeedInput } from './event/accept.ts';
import { addEvent, addEventInput } from './event/add.ts';
import { changeEvent, changeEventInput } from './event/change.ts';
import { formerEvents, formerEventsInput } from './event/former.ts';
import { eventList, eventListInput } from './event/list.ts';
import { proposeUseInput, proposeUseOf } from './event/propose.ts';
import { removeEvent, removeEventInput } from './event/remove.ts';
import { tickEvent, tickEventInput } from './event/tick.ts';
import { unrecordedEvents, unrecordedEventsInput } from './event/unrecorded.ts';
import { eventView, eventViewInput } from './event/view.ts';
import { withdrawNeed, withdrawNeedInput } from './event/withdraw.ts';
import { feedCommandInput, feedView, feedViewInput, makeFeed, revokeFeed } from './feed/manage.ts';
import { openFindings, openFindingsInput } from './finding/open.ts';
import { atEvents, atEventsInput } from './forecast/at-events.ts';
import { whatIfInput, whatIfOf } from './forecast/what-if.ts';
import { changeGarage, changeGarageInput } from './garage/change.ts';
import { createGarage, createGarageInput } from './garage/create.ts';
import { garageMine } from './garage/mine.ts';
import { garageOverview, garageOverviewInput } from './garage/overview.ts';
import { garageUrgent, garageUrgentInput } from './garage/urgent.ts';
import { addGear, addGearInput } from './gear/add.ts';
import { changeGear, changeGearInput } from './gear/change.ts';
import { gearList, gearListInput } from './gear/list.ts';
import { removeGear, removeGearInput } from './gear/remove.ts';
import { gearView, gearViewInput } from './gear/view.ts';
import { addItem, addItemInput } from './item/add.ts';
import { addManyItems, addManyItemsInput } from './item/add-many.ts';
import { changeItem, changeItemInput } from './item/change.ts';
import { removeItem, removeItemInput } from './item/remove.ts';
import { letterList, letterListInput } from './letter/list.ts';
import { markRead, markReadInput } from './letter/mark-read.ts';
import { letterSent, letterSentInput } from './letter/sent.ts';
import { letterTonight, letterTonightInput } from './letter/tonight.ts';
import { letterUnread, letterUnreadInput, letterView, letterViewInput } from './letter/view.ts';
import { changeWish, changeWishInput, letterWish, letterWishInput } from './letter/wish.ts';
import { liveChanges, liveChangesInput } from './live/changes.ts';
import { oilCompare, oilCompareInput } from './oil/compare.ts';
import { oilPastInput, oilPastOf } from './oil/past.ts';
import { addOrder, addOrderInput } from './order/add.ts';
import { changeOrder, changeOrderInput } from './order/change.ts';
import { removeOrder, removeOrderInput } from './order/remove.ts';
import { peopleNames, peopleNamesInput } from './people/names.ts';
import { addPlannedLayUp, addPlannedLayUpInput } from './planned-lay-up/add.ts';
import { changePlannedLayUp, changePlannedLayUpInput } from './planned-lay-up/change.ts';
import { removePlannedLayUp, removePlannedLayUpInput } from './planned-lay-up/remove.ts';
import { pocketSheet, pocketSheetInput } from './pocket/sheet.ts';
import { changePost, changePostInput } from './post/change.ts';
import { postTest, postTestInput } from './post/test.ts';
import { postView, postViewInput } from './post/view.ts';
import { addPutOff, addPutOffInput } from './put-off/add.ts';
import { putOffList, putOffListInput } from './put-off/list.ts';
import { removePutOff, removePutOffInput } from './put-off/remove.ts';
import { changeRequirements, changeRequirementsInput } from './requirements/change.ts';
import { requirementsList, requirementsListInput } from './requirements/list.ts';
import { listSaidOfCars, saidListInput } from './said/list.ts';
import { setupState } from './setup/state.ts';
import { changeSpec, changeSpecInput } from './spec/change.ts';
import { specView, specViewInput } from './spec/view.ts';
import { openProcedure, procedure, router } from './trpc.ts';
import { retryWork, retryWorkInput } from './work/retry.ts';

/** The doors to the verbs: each parses, calls and returns, nothing else. */
export const appRouter = router({
  setup: router({
    state: openProcedure.query(({ ctx }) => setupState(ctx)),
  }),
  garage: router({
    mine: procedure.query(({ ctx }) => garageMine(ctx.world, ctx.asker)),
    overview: procedure
      .input(asked(garageOverviewInput))
      .query(({ ctx, input }) => garageOverview(ctx.world, ctx.asker, input)),
    urgent: procedure
      .input(asked(garageUrgentInput))
      .query(({ ctx, input }) => garageUrgent(ctx.world, ctx.asker, input)),
    create: procedure
      .input(asked(createGarageInput))
      .mutation(({ ctx, input }) => createGarage(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeGarageInput))
      .mutation(({ ctx, input }) => changeGarage(ctx.world, ctx.asker, input)),
  }),
  car: router({
    view: procedure
      .input(asked(carViewInput))
      .query(({ ctx, input }) => carView(ctx.world, ctx.asker, input)),
    lastValues: procedure
      .input(asked(carLastValuesInput))
      .query(({ ctx, input }) => carLastValues(ctx.world, ctx.asker, input)),
    add: procedure
      .input(asked(addCarInput))
      .mutation(({ ctx, input }) => addCar(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeCarInput))
      .mutation(({ ctx, input }) => changeCar(ctx.world, ctx.asker, input)),
  }),
  item: router({
    add: procedure
      .input(asked(addItemInput))
      .mutation(({ ctx, input }) => addItem(ctx.world, ctx.asker, input)),
    addMany: procedure
      .input(asked(addManyItemsInput))
      .mutation(({ ctx, input }) => addManyItems(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeItemInput))
      .mutation(({ ctx, input }) => changeItem(ctx.world, ctx.asker, input)),
    remove: procedure
      .input(asked(removeItemInput))
      .mutation(({ ctx, input }) => removeItem(ctx.world, ctx.asker, input)),
  }),
  gear: router({
    list: procedure
      .input(asked(gearListInput))
      .query(({ ctx, input }) => gearList(ctx.world, ctx.asker, input)),
    view: procedure
      .input(asked(gearViewInput))
      .query(({ ctx, input }) => gearView(ctx.world, ctx.asker, input)),
    add: procedure
      .input(asked(addGearInput))
      .mutation(({ ctx, input }) => addGear(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeGearInput))
      .mutation(({ ctx, input }) => changeGear(ctx.world, ctx.asker, input)),
    remove: procedure
      .input(asked(removeGearInput))
      .mutation(({ ctx, input }) => removeGear(ctx.world, ctx.asker, input)),
  }),
  event: router({
    list: procedure
      .input(asked(eventListInput))
      .query(({ ctx, input }) => eventList(ctx.world, ctx.asker, input)),
    propose: procedure
      .input(asked(proposeUseInput))
      .query(({ ctx, input }) => proposeUseOf(ctx.world, ctx.asker, input)),
    unrecorded: procedure
      .input(asked(unrecordedEventsInput))
      .query(({ ctx, input }) => unrecordedEvents(ctx.world, ctx.asker, input)),
    add: procedure
      .input(asked(addEventInput))
      .mutation(({ ctx, input }) => addEvent(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeEventInput))
      .mutation(({ ctx, input }) => changeEvent(ctx.world, ctx.asker, input)),
    remove: procedure
      .input(asked(removeEventInput))
      .mutation(({ ctx, input }) => removeEvent(ctx.world, ctx.asker, input)),
    view: procedure
      .input(asked(eventViewInput))
      .query(({ ctx, input }) => eventView(ctx.world, ctx.asker, input)),
    former: procedure
      .input(asked(formerEventsInput))
      .query(({ ctx, input }) => formerEvents(ctx.world, ctx.asker, input)),
    tick: procedure
      .input(asked(tickEventInput))
      .mutation(({ ctx, input }) => tickEvent(ctx.world, ctx.asker, input)),
    accept: procedure
      .input(asked(acceptNeedInput))
      .mutation(({ ctx, input }) => acceptNeed(ctx.world, ctx.asker, input)),
    withdraw: procedure
      .input(asked(withdrawNeedInput))
      .mutation(({ ctx, input }) => withdrawNeed(ctx.world, ctx.asker, input)),
  }),
  requirements: router({
    list: procedure
      .input(asked(requirementsListInput))
      .query(({ ctx, input }) => requirementsList(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeRequirementsInput))
      .mutation(({ ctx, input }) => changeRequirements(ctx.world, ctx.asker, input)),
  }),
  due: router({
    list: procedure
      .input(asked(dueListInput))
      .query(({ ctx, input }) => listDue(ctx.world, ctx.asker, input)),
  }),
  plannedLayUp: router({
    add: procedure
      .input(asked(addPlannedLayUpInput))
      .mutation(({ ctx, input }) => addPlannedLayUp(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changePlannedLayUpInput))
      .mutation(({ ctx, input }) => changePlannedLayUp(ctx.world, ctx.asker, input)),
    remove: procedure
      .input(asked(removePlannedLayUpInput))
      .mutation(({ ctx, input }) => removePlannedLayUp(ctx.world, ctx.asker, input)),
  }),
  order: router({
    add: procedure
      .input(asked(addOrderInput))
      .mutation(({ ctx, input }) => addOrder(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeOrderInput))
      .mutation(({ ctx, input }) => changeOrder(ctx.world, ctx.asker, input)),
    remove: procedure
      .input(asked(removeOrderInput))
      .mutation(({ ctx, input }) => removeOrder(ctx.world, ctx.asker, input)),
  }),
  forecast: router({
    whatIf: procedure
      .input(asked(whatIfInput))
      .query(({ ctx, input }) => whatIfOf(ctx.world, ctx.asker, input)),
    atEvents: procedure
      .input(asked(atEventsInput))
      .query(({ ctx, input }) => atEvents(ctx.world, ctx.asker, input)),
  }),
  oil: router({
    compare: procedure
      .input(asked(oilCompareInput))
      .query(({ ctx, input }) => oilCompare(ctx.world, ctx.asker, input)),
    past: procedure
      .input(asked(oilPastInput))
      .query(({ ctx, input }) => oilPastOf(ctx.world, ctx.asker, input)),
  }),
  finding: router({
    open: procedure
      .input(asked(openFindingsInput))
      .query(({ ctx, input }) => openFindings(ctx.world, ctx.asker, input)),
  }),
  people: router({
    names: procedure
      .input(asked(peopleNamesInput))
      .query(({ ctx, input }) => peopleNames(ctx.world, ctx.asker, input)),
  }),
  feed: router({
    view: procedure
      .input(asked(feedViewInput))
      .query(({ ctx, input }) => feedView(ctx.world, ctx.asker, input)),
    make: procedure
      .input(asked(feedCommandInput))
      .mutation(({ ctx, input }) => makeFeed(ctx.world, ctx.asker, input)),
    revoke: procedure
      .input(asked(feedCommandInput))
      .mutation(({ ctx, input }) => revokeFeed(ctx.world, ctx.asker, input)),
  }),
  letter: router({
    list: procedure
      .input(asked(letterListInput))
      .query(({ ctx, input }) => letterList(ctx.world, ctx.asker, input)),
    view: procedure
      .input(asked(letterViewInput))
      .query(({ ctx, input }) => letterView(ctx.world, ctx.asker, input)),
    unread: procedure
      .input(asked(letterUnreadInput))
      .query(({ ctx, input }) => letterUnread(ctx.world, ctx.asker, input)),
    markRead: procedure
      .input(asked(markReadInput))
      .mutation(({ ctx, input }) => markRead(ctx.world, ctx.asker, input)),
    tonight: procedure
      .input(asked(letterTonightInput))
      .query(({ ctx, input }) => letterTonight(ctx.world, ctx.asker, input)),
    wish: procedure
      .input(asked(letterWishInput))
      .query(({ ctx, input }) => letterWish(ctx.world, ctx.asker, input)),
    changeWish: procedure
      .input(asked(changeWishInput))
      .mutation(({ ctx, input }) => changeWish(ctx.world, ctx.asker, input)),
    sent: procedure
      .input(asked(letterSentInput))
      .query(({ ctx, input }) => letterSent(ctx.world, ctx.asker, input)),
  }),
  post: router({
    view: procedure
      .input(asked(postViewInput))
      .query(({ ctx, input }) => postView(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changePostInput))
      .mutation(({ ctx, input }) => changePost(ctx.world, ctx.asker, input)),
    test: procedure
      .input(asked(postTestInput))
      .mutation(({ ctx, input }) => postTest(ctx.world, ctx.asker, input)),
  }),
  putOff: router({
    add: procedure
      .input(asked(addPutOffInput))
      .mutation(({ ctx, input }) => addPutOff(ctx.world, ctx.asker, input)),
    list: procedure
      .input(asked(putOffListInput))
      .query(({ ctx, input }) => putOffList(ctx.world, ctx.asker, input)),
    remove: procedure
      .input(asked(removePutOffInput))
      .mutation(({ ctx, input }) => removePutOff(ctx.world, ctx.asker, input)),
  }),
  pocket: router({
    sheet: procedure
      .input(asked(pocketSheetInput))
      .query(({ ctx, input }) => pocketSheet(ctx.world, ctx.asker, input)),
  }),
  said: router({
    list: procedure
      .input(asked(saidListInput))
      .query(({ ctx, input }) => listSaidOfCars(ctx.world, ctx.asker, input)),
  }),
  spec: router({
    view: procedure
      .input(asked(specViewInput))
      .query(({ ctx, input }) => specView(ctx.world, ctx.asker, input)),
    change: procedure
      .input(asked(changeSpecInput))
      .mutation(({ ctx, input }) => changeSpec(ctx.world, ctx.asker, input)),
  }),
  entry: router({
    record: procedure
      .input(asked(recordEntryInput))
      .mutation(({ ctx, input }) => recordEntry(ctx.world, ctx.asker, input)),
    amend: procedure
      .input(asked(amendEntryInput))
      .mutation(({ ctx, input }) => amendEntry(ctx.world, ctx.asker, input)),
    remove: procedure
      .input(asked(removeEntryInput))
      .mutation(({ ctx, input }) => removeEntry(ctx.world, ctx.asker, input)),
    history: procedure
      .input(asked(entryHistoryInput))
      .query(({ ctx, input }) => entryHistory(ctx.world, ctx.asker, input)),
    revisions: procedure
      .input(asked(entryRevisionsInput))
      .query(({ ctx, input }) => entryRevisions(ctx.world, ctx.asker, input)),
    one: procedure
      .input(asked(entryOneInput))
      .query(({ ctx, input }) => entryOne(ctx.world, ctx.asker, input)),
    some: procedure
      .input(asked(entrySomeInput))
      .query(({ ctx, input }) => entrySome(ctx.world, ctx.asker, input)),
  }),
  work: router({
    retry: procedure
      .input(asked(retryWorkInput))
      .mutation(({ ctx, input }) => retryWork(ctx.world, ctx.asker, input)),
  }),
  live: router({
    changes: procedure
      .input(asked(liveChangesInput))
      .subscription(({ ctx, input, signal }) =>
        liveChanges(ctx, input, signal ?? new AbortController().signal),
      ),
  }),
});

export type AppRouter = typeof appRouter;
