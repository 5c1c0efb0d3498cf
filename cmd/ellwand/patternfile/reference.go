package patternfile

import (
	"reflect"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/strict"
)

// ReferencePlace is where the keys at the top of the file stand in the reference.
const ReferencePlace = "a file of pieces"

// Reference describes the keys of the file that a job does not have: those at its
// top, and its seams.
func Reference() []strict.Mapping {
	all := strict.Reference(reflect.TypeFor[File](), nil)
	all = slices.DeleteFunc(all, func(m strict.Mapping) bool { return m.Place != "" && m.Place != "seams" })
	for i, m := range all {
		all[i].Place = strings.TrimSuffix(ReferencePlace+"."+m.Place, ".")
		for k, key := range m.Keys {
			switch key.Keys {
			case "pieces":
				all[i].Keys[k].Keys = "garments.pieces"
			case "seams":
				all[i].Keys[k].Keys = ReferencePlace + ".seams"
			}
		}
	}
	return all
}
