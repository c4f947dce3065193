/** Version of the report: it counts up where a field goes or comes to mean something else. */
export const REPORT_VERSION = 2;

/** Name of the report's schema, which every report carries. */
export const REPORT_SCHEMA = `urn:annulet:report:${REPORT_VERSION}` as const;
