### English. Keys are stable; a missing or unused message fails a test.
