import { createContext, use, useEffect, useRef, type RefObject } from 'react';

/** One picked place for picture and tables: the same number in both. */
export interface PlacePicker {
  /** Its number, and whether the picture or a row picked it. */
  picked: { label: string; by: 'picture' | 'row' } | undefined;
  /** The place that a row wants seen; a new object with every wish. */
  asked: { label: string; times: number } | undefined;
  /** Whether there is a picture to show a place on. */
  canShow: boolean;
  pick: (label: string) => void;
  show: (label: string) => void;
  tellDrawn: (isDrawn: boolean) => void;
}

export const PickerContext = createContext<PlacePicker | undefined>(undefined);

export const usePlacePicker = (): PlacePicker | undefined => use(PickerContext);

/** For the picture: also tells the rows whether there is one to show their places on. */
export function usePickerFor(isDrawn: boolean): PlacePicker | undefined {
  const picker = usePlacePicker();
  const tellDrawn = picker?.tellDrawn;
  useEffect(() => {
    tellDrawn?.(isDrawn);
    return () => tellDrawn?.(false);
  }, [tellDrawn, isDrawn]);
  return picker;
}

/** What a row needs: to know that it is picked, and the verb that shows its place. */
export interface PlaceRowHand {
  rowRef: RefObject<HTMLTableRowElement | null>;
  current: { 'aria-current'?: 'true' };
  onShow: (() => void) | undefined;
}

/** A row with a number. What is picked on the picture scrolls into view; the focus stays where it is. */
export function usePlaceRow(label: string | undefined): PlaceRowHand {
  const picker = usePlacePicker();
  const rowRef = useRef<HTMLTableRowElement>(null);
  const picked = picker?.picked;
  useEffect(() => {
    if (picked?.by !== 'picture' || picked.label !== label) return;
    // A number may stand in two tables: the first one comes into view.
    if (document.querySelector('tr[aria-current="true"]') === rowRef.current)
      rowRef.current?.scrollIntoView({ block: 'nearest' });
  }, [picked, label]);
  return {
    rowRef,
    current: label !== undefined && picked?.label === label ? { 'aria-current': 'true' } : {},
    onShow: label === undefined || picker?.canShow !== true ? undefined : () => picker.show(label),
  };
}
