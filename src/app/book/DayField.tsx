import { useId } from 'react';

/** The day of a test, as YYYY-MM-DD. */
export function DayField({ day, onDay }: { day: string; onDay: (day: string) => void }) {
  const id = useId();
  return (
    <div className="qty">
      <label htmlFor={id}>Day</label>
      <div className="in">
        <input id={id} type="date" className="day" value={day} onChange={(e) => onDay(e.target.value)} />
      </div>
    </div>
  );
}
