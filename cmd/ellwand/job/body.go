package job

import (
	"maps"
	"slices"
	"strings"

	"github.com/invopop/jsonschema"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces/language"
)

// Body holds measurements by name: bust_girth, waist_girth and so on.
type Body map[string]Measure

// JSONSchema lists the measurements, so that an editor completes them.
func (Body) JSONSchema() *jsonschema.Schema {
	properties := jsonschema.NewProperties()
	for _, name := range bodyKeys() {
		properties.Set(name, &jsonschema.Schema{Ref: "#/$defs/Measure", Description: taking[name]})
	}
	return &jsonschema.Schema{Type: "object", Properties: properties, AdditionalProperties: jsonschema.FalseSchema}
}

// bodyKeys are the measurements as the job file writes them.
func bodyKeys() []string {
	var keys []string
	for _, name := range draft.Measurements() {
		keys = append(keys, bodyKey(name))
	}
	return keys
}

func bodyKey(name draft.Measurement) string { return strings.ReplaceAll(string(name), " ", "_") }

// sized takes the body of a size table, when the job or wearer at a path names
// one. A table beside measurements needs no size: what is missing is derived
// from it.
func (v values) sized(path Path, size, table string, measured bool) draft.Body {
	switch {
	case size == "" && table != "" && measured:
		if !slices.Contains(draft.Tables(), table) {
			v.fault(path.Key("table"), strict.Unknown, "there is no size table %q; use one of: %s",
				"eine Größentabelle %q gibt es nicht; es gibt: %s", table,
				strings.Join(draft.Tables(), ", "))
		}
		return draft.Body{}
	case size == "" && table == "":
		return draft.Body{}
	case size == "":
		v.fault(path.Key("table"), strict.Missing,
			"the table %q is named without a size; add one, such as: size: 12, or measurements under body:",
			"die Größentabelle %q ist ohne Größe genannt; geben Sie eine an, etwa 12, oder Maße "+
				"des Körpers", table)
		return draft.Body{}
	case table == "":
		v.fault(path.Key("size"), strict.Missing,
			"size %s of which table? Sizes of the same name differ; add one of: "+
				"table: %s",
			"Größe %s aus welcher Tabelle? Größen mit gleichem Namen sind verschieden; es gibt: %s",
			size, strings.Join(draft.Tables(), ", table: "))
		return draft.Body{}
	}
	body, err := draft.Size(table, size)
	if err != nil {
		key := "size"
		if !slices.Contains(draft.Tables(), table) {
			key = "table"
		}
		v.Note(path.Key(key), strict.Unknown, language.OfError(err))
		return draft.Body{}
	}
	return body
}

// unknownMeasurement says what may be meant: table and size stand beside the body.
func (v values) unknownMeasurement(path Path, key string) {
	if beside, is := strict.KnownAs(key, []string{"table", "size"}); is {
		v.fault(path, strict.Unknown, "%s is no measurement; write it above body, not in it",
			"%s ist kein Maß; es gehört neben die Maße des Körpers, nicht darunter", beside)
		return
	}
	v.fault(path, strict.Unknown, "unknown measurement %q; %s", "ein Maß %q ist nicht bekannt; %s", key,
		strict.Hint(key, bodyKeys()))
}

// measured parses the measurements under body, each checked by itself so that
// a fault has its own line.
func (v values) measured(at Path, given Body) draft.Body {
	body := draft.Body{}
	for _, key := range slices.Sorted(maps.Keys(given)) {
		path := at.Key("body").Key(key)
		known, found := strict.KnownAs(key, bodyKeys())
		if !found {
			v.unknownMeasurement(path, key)
			continue
		}
		name := draft.Measurement(strings.ReplaceAll(known, "_", " "))
		value, ok := v.length(path, language.Say("the %s", "%s", name), given[key])
		if !ok {
			continue
		}
		if err := (draft.Body{name: value}).Check(); err != nil {
			v.Note(path, strict.OutOfRange, draft.Said(err, v.Unit))
			continue
		}
		if _, twice := body[name]; twice {
			v.fault(path, strict.Twice, "the %s stands twice; keep one of them",
				"%s steht zweimal da; eines davon muss weg", name)
		}
		body[name] = value
	}
	return body
}
