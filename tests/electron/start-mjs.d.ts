/** What start.mjs exports: it is plain JavaScript, for the sake of old versions of Node. */
declare module '*/start.mjs' {
  export interface StartOptions {
    data: string | null;
    port: string | null;
    open: boolean;
    browser: boolean;
  }
  export interface Facts {
    browserAsked: boolean;
    isRoot: boolean;
    hasScreen: boolean;
    hasWindowProgram: boolean;
    mayFetch: boolean;
  }
  export type Reason = 'asked' | 'root' | 'no-screen' | 'missing';
  export type Way = { way: 'window' } | { way: 'fetch' } | { way: 'browser'; reason: Reason };

  export function nodeRefusal(version: string): string | null;
  export function readArguments(argv: string[]): StartOptions | { problem: string };
  export function windowProgram(root: string): string | null;
  export function chooseWay(facts: Facts): Way;
  export function reasonLine(reason: Reason, open: boolean): string;
  export function hostArguments(options: StartOptions): string[];
  export function windowArguments(root: string, options: StartOptions): string[];
  export function isStale(root: string, output: string, sources: string[]): boolean;
  export function mayFetch(root: string, env: Record<string, string>): boolean;
  export function fetchWindowProgram(root: string, patience: number): Promise<boolean>;
}
