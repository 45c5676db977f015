# The service and nothing else that has to run: no shell is used, nothing is written.
# hadolint global ignore=DL3006  both images are arguments: a deployment pins them by digest
ARG RUST_IMAGE=rust:1.95-bookworm
ARG BASE_IMAGE=gcr.io/distroless/cc-debian12:nonroot

FROM ${RUST_IMAGE} AS build
WORKDIR /build
COPY Cargo.toml Cargo.lock build.rs ./
COPY src ./src
COPY openapi ./openapi
COPY tests/conformance ./tests/conformance
RUN cargo build --profile dist --locked && strip target/dist/elbowroom

FROM ${BASE_IMAGE}
COPY --from=build /build/target/dist/elbowroom /usr/local/bin/elbowroom
USER 65532:65532
# Others can reach a container: it does not start before ELBOWROOM_KEYS names a file, or ELBOWROOM_WITHOUT_KEYS is true.
ENV ELBOWROOM_BIND=0.0.0.0:8314 \
    ELBOWROOM_METRICS_BIND=0.0.0.0:8315 \
    ELBOWROOM_LOG_FORMAT=json
EXPOSE 8314 8315
HEALTHCHECK --interval=10s --timeout=4s --start-period=5s --retries=3 \
    CMD ["/usr/local/bin/elbowroom", "healthcheck"]
STOPSIGNAL SIGTERM
ENTRYPOINT ["/usr/local/bin/elbowroom"]
