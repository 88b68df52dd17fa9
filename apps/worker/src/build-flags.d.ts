/** Set by the bundler: true only in the build that tests run. */
declare const __TEST_BUILD__: boolean;
