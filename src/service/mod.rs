//! HTTP: routes, problems, limits, the OpenAPI document.
