import { Route, Switch } from 'wouter';
import { BenchListScreen } from './bench-list-screen.tsx';
import { BenchViewScreen } from './bench-view-screen.tsx';

/** The bench has no frame of the office around it. */
export function isBenchPath(path: string): boolean {
  return path === '/bench' || path.startsWith('/bench/');
}

export function BenchRoutes() {
  return (
    <Switch>
      <Route path="/bench/:orderId">
        {({ orderId }) => <BenchViewScreen key={orderId} orderId={orderId} />}
      </Route>
      <Route>
        <BenchListScreen />
      </Route>
    </Switch>
  );
}
