import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';

interface UnsavedParts {
  parts: readonly string[];
  report: (part: string, isUnsaved: boolean) => void;
}

const Unsaved = createContext<UnsavedParts>({ parts: [], report: () => undefined });

/** Keeps which parts of the table hold something typed that is not saved yet. */
export function UnsavedProvider({ children }: { children: ReactNode }) {
  const [parts, setParts] = useState<readonly string[]>([]);
  const value = useMemo(
    () => ({
      parts,
      report: (part: string, isUnsaved: boolean) =>
        setParts((now) => {
          if (now.includes(part) === isUnsaved) return now;
          return isUnsaved ? [...now, part] : now.filter((one) => one !== part);
        }),
    }),
    [parts],
  );
  return <Unsaved value={value}>{children}</Unsaved>;
}

export function useUnsavedParts(): readonly string[] {
  return useContext(Unsaved).parts;
}

/** Tells the end of the page that this part is not saved, and that it is once it is. */
export function useReportUnsaved(part: string, isUnsaved: boolean): void {
  const { report } = useContext(Unsaved);
  // biome-ignore lint/correctness/useExhaustiveDependencies: reporting changes the context itself.
  useEffect(() => {
    report(part, isUnsaved);
    return () => report(part, false);
  }, [part, isUnsaved]);
}
