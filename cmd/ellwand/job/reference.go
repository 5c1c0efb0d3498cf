package job

import (
	"reflect"
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces/seams"
)

// Reference describes every key of the job file, from the types that it is read
// into (see strict.Reference).
func Reference() []strict.Mapping {
	all := strict.Reference(reflect.TypeFor[File](), map[reflect.Type]string{
		reflect.TypeFor[Body](): "body", reflect.TypeFor[map[string]Measure](): "allowances",
	})
	return append(all, measurements(), allowanceKeys())
}

// measurements are the keys of a body.
func measurements() strict.Mapping {
	out := strict.Mapping{Place: "body"}
	for _, name := range bodyKeys() {
		out.Keys = append(out.Keys, strict.Key{Name: name, Value: "length", Holds: strict.HoldsLength, Text: taking[name]})
	}
	return out
}

// allowanceKeys are the seams that an allowance can be given to.
func allowanceKeys() strict.Mapping {
	out := strict.Mapping{Place: "allowances"}
	for _, name := range draft.AllowanceNames() {
		text := "as seams"
		if mm := draft.UsualAllowance(name); mm > 0 {
			text = strconv.FormatFloat(mm/10, 'f', -1, 64) + " cm"
		}
		if name == seams.Every {
			text += "; every seam that is not named"
		}
		out.Keys = append(out.Keys, strict.Key{Name: strings.ReplaceAll(name.String(), " ", "_"), Value: "length",
			Holds: strict.HoldsLength, Text: text})
	}
	return out
}
