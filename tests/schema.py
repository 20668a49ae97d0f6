"""Validates every example and every conformance case against the committed JSON Schema."""

import json
import pathlib

from carb import _carb
from jsonschema import Draft202012Validator

ROOT = pathlib.Path(__file__).resolve().parent.parent
SCHEMA = json.loads((ROOT / "docs" / "schema" / "carb-1.json").read_text(encoding="utf-8"))


def validator(definition: str) -> Draft202012Validator:
    return Draft202012Validator({**SCHEMA, "$ref": f"#/$defs/{definition}"})


def main() -> None:
    Draft202012Validator.check_schema(SCHEMA)
    known = {name: validator(name) for name in SCHEMA["$defs"] if "." in name}
    requests, answers, refused = 0, 0, 0
    for path in sorted((ROOT / "docs" / "scenarios").glob("*.json")):
        known["request.plan"].validate(json.loads(path.read_text(encoding="utf-8")))
        requests += 1
    tables = json.loads(_carb.tables())
    for entry in tables["functions"] + tables["tables"]:
        name, example = entry["name"], {"carb": 1, **json.loads(entry["example"])}
        known[f"request.{name}"].validate(example)
        known[f"answer.{name}"].validate(json.loads(_carb.json(name, json.dumps(example))))
    for function in tables["functions"]:
        # The same with how sure it is.
        name, asked = function["name"], {"carb": 1, **json.loads(function["example"]), "uncertainty": {}}
        known[f"request.{name}"].validate(asked)
        answer = json.loads(_carb.json(name, json.dumps(asked)))
        known[f"answer.{name}"].validate(answer)
        assert "uncertainty" in answer
        requests, answers = requests + 2, answers + 2
    demo = (ROOT / "docs" / "scenarios" / "harbour_ale.json").read_text(encoding="utf-8")
    known["answer.plan"].validate(json.loads(_carb.json("plan", demo)))
    for line in (ROOT / "tests" / "conformance" / "cases.tsv").read_text(encoding="utf-8").splitlines()[1:]:
        function, _, code, *_, request, answer = line.split("\t")
        known[f"answer.{function}"].validate(json.loads(answer))
        answers += 1
        valid = known[f"request.{function}"].is_valid(json.loads(request))
        if code == "0":
            # What is answered is a valid request.
            assert valid, (function, request)
            requests += 1
        refused += not valid
    assert requests > 300 and answers > 600 and refused >= 20, (requests, answers, refused)
    print(f"{requests} requests and {answers} answers are valid by the schema, {refused} wrong requests are not")


if __name__ == "__main__":
    main()
