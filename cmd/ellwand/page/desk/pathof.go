package desk

import "ellwand/cmd/ellwand/strict"

// PathOf steps as JSON has them.
func PathOf(steps []any) strict.Path {
	out := strict.Path{}
	for _, one := range steps {
		switch s := one.(type) {
		case string:
			out = out.Key(s)
		case int:
			out = out.Entry(s)
		case float64:
			out = out.Entry(int(s))
		}
	}
	return out
}
