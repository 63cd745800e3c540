/** Name under which this device keeps the light somebody chose. Absent: the system's choice. */
export const LIGHT_KEPT_AS = 'daybook-light'
