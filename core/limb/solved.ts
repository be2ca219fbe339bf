/** How a solver ended. `infeasible`: no such state exists, and `why` says so in a sentence. */
export type SolveStatus = 'converged' | 'not-converged' | 'infeasible';

/** A numerical answer with what it is worth. There is a value only where the solver converged. */
export type Solved<Value> =
  | { status: 'converged'; value: Value; residual: number; iterations: number }
  | {
      status: 'not-converged' | 'infeasible';
      value: null;
      residual: number;
      iterations: number;
      why: string;
    };

export function converged<Value>(
  value: Value,
  residual: number,
  iterations: number,
): Solved<Value> {
  return { status: 'converged', value, residual, iterations };
}

export function failed(
  status: 'not-converged' | 'infeasible',
  why: string,
  residual: number,
  iterations: number,
): Solved<never> {
  return { status, value: null, residual, iterations, why };
}
