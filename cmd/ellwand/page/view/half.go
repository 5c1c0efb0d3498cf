package view

import (
	"maps"
	"slices"

	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/strict"
)

// halves adds the fields that hold what does not stand where the file has no place for them
// yet: the first value of a price, of the hours of a garment.
func (f *former) halves() {
	listed := map[string]bool{}
	for _, one := range f.fields {
		listed[desk.PathOf(one.Path).String()] = true
	}
	for _, name := range slices.Sorted(maps.Keys(f.state.Typed)) {
		path := desk.PathOf(f.state.Typed[name].Path)
		if listed[name] || len(path) == 0 {
			continue
		}
		last := path[len(path)-1].Key
		key, kind := strict.Key{Name: last}, singles[strict.HoldsText]
		known, _ := desk.MappingAt(path[:len(path)-1])
		for _, one := range known.Keys {
			if held, is := singles[one.Holds]; is && one.Name == last {
				key, kind = one, held
			}
		}
		f.fields = append(f.fields, f.field(path, key, kind, nil))
	}
}
