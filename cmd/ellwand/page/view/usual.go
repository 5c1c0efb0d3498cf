package view

import (
	"fmt"

	"ellwand/cmd/ellwand/job"
)

// usuals gives the fields of cloths that are empty what is in use in their place.
func (f *former) usuals() {
	if f.state.Work == nil {
		return
	}
	for i, field := range f.fields {
		if field.Value == "" && field.Derived == "" {
			f.fields[i].Derived = usualOf(f.state.Work, field.Path)
		}
	}
}

// usualOf a cloth where nothing is written; empty where nothing is in use either.
func usualOf(work *job.Work, path []any) string {
	if len(path) != 3 || path[0] != "cloths" {
		return ""
	}
	nth, is := path[1].(int)
	if !is || nth >= len(work.Cloths) {
		return ""
	}
	c := work.Cloths[nth].Cloth
	switch path[2] {
	case "selvedge":
		return numberOf(work, c.Selvedge)
	case "step":
		return numberOf(work, c.PurchaseStep)
	case "hand_laying":
		return fmt.Sprintf("%g %%", 100*c.HandLaying.Share)
	}
	return ""
}
