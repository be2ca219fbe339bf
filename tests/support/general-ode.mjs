// The package ships its TypeScript source, which does not pass our stricter compiler: it comes in
// through this plain module, with the types it needs beside it.
export { Solver } from 'odex';
