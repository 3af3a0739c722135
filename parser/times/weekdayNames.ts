/** Sunday is 0, as in `weekdayOf`. */
export const WEEKDAYS = new Map<string, number>(
  [
    'sunday sun domingo',
    'monday mon lunes',
    'tuesday tue tues martes',
    'wednesday wed weds miercoles',
    'thursday thu thur thurs jueves',
    'friday fri viernes',
    'saturday sat sabado',
  ].flatMap((names, day) => names.split(' ').map((name) => [name, day] as const)),
);

/** What may follow a weekday and say which part of it is meant. */
export const PART = /^(?:mornin|morning|afternoon|arvo|night|evening|am|pm|aft|noon|midday|lunchtime|eod)$/;
