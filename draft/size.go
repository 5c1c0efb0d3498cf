package draft

import (
	"embed"
	"encoding/csv"
	"slices"
	"strconv"
	"strings"
	"sync"

	"ellwand/pieces/language"
)

// tableFiles hold the size tables, each with its source in the head.
//
//go:embed tables/*.csv
var tableFiles embed.FS

// tableNames in the order in which they are offered.
var tableNames = []string{"women", "misses", "men", "children"}

// table is a size table.
type table struct {
	sizes []string
	// rows hold a value for each size, in mm.
	rows map[Measurement][]float64
	// height is that of the body the table is for, where it is one for all
	// sizes; 0 where it is not known, or a row of the table.
	height float64
}

var tables = sync.OnceValue(func() map[string]table {
	all := map[string]table{}
	for _, name := range tableNames {
		all[name] = readTable(name)
	}
	return all
})

// readTable reads a table that comes with the program; a fault in it shows as
// a missing row, and the tests look for those.
func readTable(name string) table {
	text, err := tableFiles.ReadFile("tables/" + name + ".csv")
	if err != nil {
		return table{}
	}
	perUnit := 10.0
	if strings.Contains(string(text), "\n# unit: in\n") {
		perUnit = 25.4
	}
	reader := csv.NewReader(strings.NewReader(string(text)))
	reader.Comment = '#'
	records, err := reader.ReadAll()
	if err != nil || len(records) == 0 {
		return table{}
	}
	t := table{sizes: records[0][1:], rows: map[Measurement][]float64{}, height: perUnit * heightOf(string(text))}
	for _, record := range records[1:] {
		values := make([]float64, len(record)-1)
		for i, field := range record[1:] {
			value, err := strconv.ParseFloat(field, 64)
			if err != nil {
				return table{}
			}
			values[i] = value * perUnit
		}
		t.rows[Measurement(record[0])] = values
	}
	return t
}

// heightOf reads the line of a table's head that says which height it is for.
func heightOf(text string) float64 {
	_, after, _ := strings.Cut(text, "\n# height: ")
	line, _, _ := strings.Cut(after, "\n")
	height, err := strconv.ParseFloat(strings.TrimSpace(line), 64)
	if err != nil {
		return 0
	}
	return height
}

// Tables lists the size tables.
func Tables() []string { return slices.Clone(tableNames) }

// Sizes lists the sizes of a table; none for a table that is unknown.
func Sizes(name string) []string { return slices.Clone(tables()[name].sizes) }

// Size returns the body of a size of a table: "women" (the handbook
// table, sizes 6 to 24) or "misses" (ASTM D5585-11e1, sizes 00 to 20, girths
// only), "men" (by chest girth, 88 to 120) or "children" (by height, 98 to 152),
// both from memory. The error names the tables or sizes that there are.
func Size(name, size string) (Body, error) {
	t, ok := tables()[name]
	if !ok {
		return nil, unknownTable(name)
	}
	i := slices.Index(t.sizes, strings.TrimSpace(size))
	if i < 0 {
		return nil, language.Refuse("the table %q has no size %q; its sizes are %s",
			"die Größentabelle %q hat keine Größe %q; sie hat %s",
			name, size, strings.Join(t.sizes, ", "))
	}
	body := Body{}
	for measurement, values := range t.rows {
		body[measurement] = values[i]
	}
	return body, nil
}

func unknownTable(name string) error {
	return language.Refuse("there is no size table %q; use one of: %s",
		"eine Größentabelle %q gibt es nicht; es gibt: %s", name, strings.Join(tableNames, ", "))
}

// at reads a row of the table for a value of another row: in proportion between
// two sizes, and carried on beyond the ends at the pace of the last two; for a
// girth above that of the largest size the frame of the body, unlike its
// girths, grows half as fast [source.CommonPractice]. ok is false when the table has
// no such row.
func (t table) at(name, by Measurement, known float64) (value float64, ok bool) {
	row, steps := t.rows[name], t.rows[by]
	if len(row) < 2 || len(steps) != len(row) {
		return 0, false
	}
	i, last := 0, len(steps)-1
	for i < last-1 && known > steps[i+1] {
		i++
	}
	pace := (row[i+1] - row[i]) / (steps[i+1] - steps[i])
	beyond := max(0, known-steps[last])
	if by != Height && !slices.Contains(girths, name) {
		beyond /= 2
	}
	return row[i] + float64(pace*(min(known, steps[last])-steps[i]+beyond)), true
}
