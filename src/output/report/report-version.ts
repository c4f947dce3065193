/** Version of the report: it counts up where a field goes or comes to mean something else. */
export const REPORT_VERSION = 1;
