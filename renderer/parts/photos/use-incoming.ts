import { type DragEvent, useEffect, useRef, useState } from 'react';

const hasFiles = (data: DataTransfer | null) => data?.types.includes('Files') ?? false;

const mark = 'data-takes-files';

/** The strip that a paste is meant for: the one under the pointer, else the one with the focus. */
function pasteTarget(): Element | null {
  return (
    document.querySelector(`[${mark}]:hover`) ??
    document.activeElement?.closest(`[${mark}]`) ??
    null
  );
}

/** Text copied from an office program often brings a picture along: in a field, the text is meant. */
function isTextIntoField(event: ClipboardEvent): boolean {
  const { target, clipboardData } = event;
  if (!(target instanceof HTMLElement)) return false;
  const isField = target.isContentEditable || target.matches('input, textarea');
  return isField && (clipboardData?.types.includes('text/plain') ?? false);
}

export interface Incoming {
  /** Files are held over it. */
  isOver: boolean;
  /** To spread on the element that takes files. */
  zone: {
    ref: (element: HTMLElement | null) => void;
    [mark]: true;
    onDragOver: (event: DragEvent) => void;
    onDragLeave: (event: DragEvent) => void;
    onDrop: (event: DragEvent) => void;
  };
}

/** Keeps a file that was dropped beside its target from opening in place of the program. */
function useNothingBeside(): void {
  useEffect(() => {
    const stay = (event: globalThis.DragEvent) => {
      if (!hasFiles(event.dataTransfer) || event.defaultPrevented) return;
      event.preventDefault();
      if (event.dataTransfer !== null) event.dataTransfer.dropEffect = 'none';
    };
    window.addEventListener('dragover', stay);
    window.addEventListener('drop', stay);
    return () => {
      window.removeEventListener('dragover', stay);
      window.removeEventListener('drop', stay);
    };
  }, []);
}

/** Files that are dragged onto an element, or pasted while it has the pointer or the focus. */
export function useIncoming(onFiles: (files: File[]) => void): Incoming {
  const [isOver, setOver] = useState(false);
  const element = useRef<HTMLElement | null>(null);
  const take = useRef(onFiles);
  take.current = onFiles;
  useNothingBeside();

  useEffect(() => {
    const onPaste = (event: ClipboardEvent) => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length === 0 || isTextIntoField(event)) return;
      if (element.current === null || pasteTarget() !== element.current) return;
      event.preventDefault();
      take.current(files);
    };
    document.addEventListener('paste', onPaste);
    return () => document.removeEventListener('paste', onPaste);
  }, []);

  return {
    isOver,
    zone: {
      ref: (given) => {
        element.current = given;
      },
      [mark]: true,
      onDragOver: (event) => {
        if (!hasFiles(event.dataTransfer)) return;
        event.preventDefault();
        event.dataTransfer.dropEffect = 'copy';
        setOver(true);
      },
      onDragLeave: (event) => {
        const to = event.relatedTarget;
        if (to instanceof Node && event.currentTarget.contains(to)) return;
        setOver(false);
      },
      onDrop: (event) => {
        setOver(false);
        if (!hasFiles(event.dataTransfer)) return;
        event.preventDefault();
        take.current([...event.dataTransfer.files]);
      },
    },
  };
}
