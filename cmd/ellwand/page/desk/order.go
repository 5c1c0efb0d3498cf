package desk

import (
	"strings"
	"sync"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/strict"
)

// mappings of the job file by their place.
var mappings = sync.OnceValue(func() map[string]strict.Mapping {
	out := map[string]strict.Mapping{}
	for _, mapping := range job.Reference() {
		out[mapping.Place] = mapping
	}
	return out
})

// MappingAt is the mapping that stands at a path of a job; false where none is known.
func MappingAt(path strict.Path) (strict.Mapping, bool) {
	all := mappings()
	at, known := all[""]
	for _, step := range path {
		if step.Key == "" {
			continue
		}
		place := strings.TrimPrefix(at.Place+"."+step.Key, ".")
		for _, key := range at.Keys {
			if key.Name == step.Key && key.Keys != "" {
				place = key.Keys
			}
		}
		if at, known = all[place]; !known {
			return strict.Mapping{}, false
		}
	}
	return at, known
}

// Order in which the keys of the mapping at a path stand.
func Order(path strict.Path) []string {
	mapping, _ := MappingAt(path)
	var out []string
	for _, key := range mapping.Keys {
		out = append(out, key.Name)
	}
	return out
}
