package svgin

import (
	"slices"
	"strings"
)

// rule of a style sheet: .class, #id or an element's name, and what it sets. Rules with
// more to their selectors are passed over.
type rule struct {
	selector string
	weight   int
	set      map[string]string
}

// mostRules of the style sheets of a drawing [source.OwnChoice].
const mostRules = 2000

// rulesOf all style sheets, the strongest last.
func rulesOf(root *node) []rule {
	var out []rule
	root.each(func(n *node) {
		if n.name == "style" {
			out = append(out, sheetRules(n.text)...)
		}
	})
	out = out[:min(len(out), mostRules)]
	slices.SortStableFunc(out, func(a, b rule) int { return a.weight - b.weight })
	return out
}

func sheetRules(text string) []rule {
	var out []rule
	text = withoutRemarks(text)
	for len(out) < mostRules {
		selectors, rest, ok := strings.Cut(text, "{")
		body, next, closed := strings.Cut(rest, "}")
		if !ok || !closed {
			return out
		}
		text = next
		set := declarations(body)
		for _, one := range strings.Split(selectors, ",") {
			one = strings.TrimSpace(one)
			if one == "" || strings.ContainsAny(one[1:], " .#>+~:[*@") || len(out) >= mostRules {
				continue
			}
			out = append(out, rule{one, weightOf(one), set})
		}
	}
	return out
}

// declarations of a style: "stroke: red; fill: none".
func declarations(text string) map[string]string {
	out := map[string]string{}
	for _, one := range strings.Split(text, ";") {
		key, value, ok := strings.Cut(one, ":")
		if ok {
			value, _, _ = strings.Cut(value, "!")
			out[strings.ToLower(strings.TrimSpace(key))] = strings.TrimSpace(value)
		}
	}
	return out
}

func withoutRemarks(text string) string {
	var out strings.Builder
	for {
		before, rest, ok := strings.Cut(text, "/*")
		out.WriteString(before)
		if !ok {
			return out.String()
		}
		_, text, _ = strings.Cut(rest, "*/")
	}
}

func weightOf(selector string) int {
	switch selector[0] {
	case '#':
		return 2
	case '.':
		return 1
	}
	return 0
}

func (r rule) fits(n *node) bool {
	switch r.selector[0] {
	case '#':
		return n.attr["id"] == r.selector[1:]
	case '.':
		return slices.Contains(strings.Fields(n.attr["class"]), r.selector[1:])
	case '*':
		return r.selector == "*"
	}
	return n.name == r.selector
}
