#!/usr/bin/env bash
# The manifests against the schemas of Kubernetes, and what schemas do not say: names that must agree across files.
#
#     deploy/checks/kubernetes.sh FOLDER_OF_PROGRAMS BINARY
set -euo pipefail
programs=$(realpath "${1:?the folder of kubernetes-validate}")
binary=$(realpath "${2:?the program}")
cd "$(dirname "$0")/../kubernetes"

"$programs/kubernetes-validate" --strict --kubernetes-version 1.30 ./*.yaml
"$programs/python" - <<'PYTHON'
import pathlib
import yaml

manifests = {}
for path in pathlib.Path(".").glob("*.yaml"):
    for manifest in yaml.safe_load_all(path.read_text()):
        manifests[manifest["kind"]] = manifest

pods = manifests["Deployment"]["spec"]["template"]
labels = pods["metadata"]["labels"]
container = pods["spec"]["containers"][0]
ports = {port["name"]: port["containerPort"] for port in container["ports"]}
for kind, selector in [
    ("Deployment", manifests["Deployment"]["spec"]["selector"]["matchLabels"]),
    ("Service", manifests["Service"]["spec"]["selector"]),
    ("PodDisruptionBudget", manifests["PodDisruptionBudget"]["spec"]["selector"]["matchLabels"]),
    ("NetworkPolicy", manifests["NetworkPolicy"]["spec"]["podSelector"]["matchLabels"]),
]:
    assert selector.items() <= labels.items(), f"{kind} selects other pods"
for port in manifests["Service"]["spec"]["ports"]:
    assert port["targetPort"] in ports, f"the Service has no port {port['targetPort']}"
for probe in ["startupProbe", "livenessProbe", "readinessProbe"]:
    assert container[probe]["httpGet"]["port"] in ports, probe
opened = {port["port"] for rule in manifests["NetworkPolicy"]["spec"]["ingress"] for port in rule["ports"]}
assert opened == set(ports.values()), opened
names = {volume["name"] for volume in pods["spec"]["volumes"]}
assert {mount["name"] for mount in container["volumeMounts"]} == names
assert manifests["ConfigMap"]["metadata"]["name"] in str(pods["spec"]["volumes"])
assert manifests["HorizontalPodAutoscaler"]["spec"]["scaleTargetRef"]["name"] == manifests["Deployment"]["metadata"]["name"]
assert manifests["HorizontalPodAutoscaler"]["spec"]["minReplicas"] > manifests["PodDisruptionBudget"]["spec"]["maxUnavailable"]
security = {**pods["spec"]["securityContext"], **container["securityContext"]}
assert security["runAsNonRoot"] and security["readOnlyRootFilesystem"]
assert security["capabilities"]["drop"] == ["ALL"] and security["allowPrivilegeEscalation"] is False
print(f"{len(manifests)} manifests hold together")
PYTHON

# the settings in the manifests are settings of the program
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"$programs/python" -c 'import yaml; print(yaml.safe_load(open("settings.yaml"))["data"]["settings.toml"])' >"$work/settings.toml"
"$binary" --settings "$work/settings.toml" --keys /etc/elbowroom-keys/keys.toml --print-settings >/dev/null
echo "the program reads the settings of the manifests"
