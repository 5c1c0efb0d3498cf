package job

import (
	"context"
	"fmt"
	"maps"
	"slices"

	"ellwand/draft"
)

// DerivedNames are the measurements that were derived for any garment, in the order
// of the body, each once.
func (w *Work) DerivedNames() []string {
	var out []string
	for _, name := range draft.Measurements() {
		if slices.ContainsFunc(w.Garments, func(m Made) bool { _, is := m.Derived[name]; return is }) {
			out = append(out, string(name))
		}
	}
	return out
}

// WithDerived resolves the job again, each measurement that was derived larger by a
// share, or smaller by a negative one. It fails where that cannot be drafted, and ends as
// the context does.
func (w *Work) WithDerived(ctx context.Context, by float64) (*Work, error) {
	file := *w.file.Within(ctx)
	file.Wearers = slices.Clone(file.Wearers)
	for _, made := range w.Garments {
		body := &file.Body
		for i := range file.Wearers {
			if string(file.Wearers[i].Name) == made.Wearer {
				body = &file.Wearers[i].Body
			}
		}
		*body = maps.Clone(*body)
		if *body == nil {
			*body = Body{}
		}
		for name := range made.Derived {
			(*body)[bodyKey(name)] = Measure(fmt.Sprintf("%.3f mm", float64(made.Body[name]*(1+by))))
		}
	}
	return file.resolve(shortening{})
}
