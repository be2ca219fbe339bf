declare module '*/general-ode.mjs' {
  /** Extrapolation code for ordinary differential equations, as far as the tests use it. */
  export class Solver {
    constructor(size: number);
    absoluteTolerance: number;
    relativeTolerance: number;
    solve(
      derivative: (x: number, y: number[]) => number[],
      from: number,
      start: number[],
      to: number,
    ): { y: number[] };
  }
}
