import { useEffect } from 'react';
import { Redirect, Route, Switch, useLocation } from 'wouter';
import { followChanges } from './api/change-stream.ts';
import { Frame } from './frame/frame.tsx';
import { ScreenGuard } from './frame/screen-guard.tsx';
import { UndoNotices } from './parts/undo/undo-notices.tsx';
import { BenchRoutes, isBenchPath } from './screens/bench-view/bench-routes.tsx';
import { BoardScreen } from './screens/board/board-screen.tsx';
import { BowScreen } from './screens/bows/bow-screen.tsx';
import { CustomerScreen } from './screens/customers/customer-screen.tsx';
import { CustomersScreen } from './screens/customers/customers-screen.tsx';
import { FinishRoomScreen } from './screens/finish-room/finish-room-screen.tsx';
import { IntakePage } from './screens/intake/intake-page.tsx';
import { OrderPage } from './screens/orders/order-page.tsx';
import { OwnerScreen } from './screens/owner/owner-screen.tsx';
import { PapersScreen } from './screens/papers/papers-screen.tsx';
import { SettingsScreen } from './screens/settings/settings-screen.tsx';
import { StartUp } from './screens/start-up/start-up.tsx';
import { ConsumableScreen, LotScreen } from './screens/stores/consumable-screen.tsx';
import { ShoppingScreen } from './screens/stores/shopping-screen.tsx';
import { StoresScreen } from './screens/stores/stores-screen.tsx';
import { TodayScreen } from './screens/today/today-screen.tsx';
import { UnknownScreen } from './screens/unknown-screen.tsx';
import { UnpackingPage } from './screens/unpacking/unpacking-page.tsx';
import { BowDesk } from './screens/weight-bench/bow-desk.tsx';
import { OrderDesk } from './screens/weight-bench/order-desk.tsx';
import { WeightBenchScreen } from './screens/weight-bench/weight-bench-screen.tsx';
import { WhatIfDesk } from './screens/weight-bench/what-if-desk.tsx';

function Screens() {
  return (
    <Switch>
      <Route path="/">
        <Redirect to="/today" replace />
      </Route>
      <Route path="/today">
        <TodayScreen />
      </Route>
      <Route path="/board">
        <BoardScreen />
      </Route>
      <Route path="/intake">
        <IntakePage />
      </Route>
      <Route path="/orders/:id">{({ id }) => <OrderPage key={id} id={id} />}</Route>
      <Route path="/orders/:id/unpacking">{({ id }) => <UnpackingPage key={id} id={id} />}</Route>
      <Route path="/customers">
        <CustomersScreen />
      </Route>
      <Route path="/customers/:id">{({ id }) => <CustomerScreen key={id} id={id} />}</Route>
      <Route path="/bows/:id">{({ id }) => <BowScreen key={id} id={id} />}</Route>
      <Route path="/weight-bench">
        <WeightBenchScreen />
      </Route>
      <Route path="/weight-bench/what-if">
        <WhatIfDesk />
      </Route>
      <Route path="/weight-bench/order/:id">{({ id }) => <OrderDesk key={id} id={id} />}</Route>
      <Route path="/weight-bench/bow/:id">{({ id }) => <BowDesk key={id} id={id} />}</Route>
      <Route path="/stores">
        <StoresScreen />
      </Route>
      <Route path="/stores/shopping">
        <ShoppingScreen />
      </Route>
      <Route path="/stores/lot/:id">{({ id }) => <LotScreen key={id} id={id} />}</Route>
      <Route path="/stores/:id">{({ id }) => <ConsumableScreen key={id} id={id} />}</Route>
      <Route path="/finish-room">
        <FinishRoomScreen />
      </Route>
      <Route path="/papers">
        <PapersScreen />
      </Route>
      <Route path="/owner">
        <OwnerScreen />
      </Route>
      <Route path="/settings">
        <SettingsScreen />
      </Route>
      <Route>
        <UnknownScreen />
      </Route>
    </Switch>
  );
}

/** The office in its frame, or the bench, which has the whole screen. */
function Rooms() {
  const [path] = useLocation();
  if (isBenchPath(path)) {
    return (
      <ScreenGuard>
        <BenchRoutes />
      </ScreenGuard>
    );
  }
  return (
    <Frame>
      <ScreenGuard>
        <Screens />
      </ScreenGuard>
      <UndoNotices />
    </Frame>
  );
}

/** Nothing but the start-up screens shows until the shop is open and somebody is working. */
export function App() {
  useEffect(followChanges, []);
  return (
    <StartUp>
      <Rooms />
    </StartUp>
  );
}
