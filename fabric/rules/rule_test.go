package rules_test

import (
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
)

// Every rule that pieces of a cloth keep has its geometry, its proof and its words, each
// in a file of its name that registers it.
func TestEveryRuleIsWhole(t *testing.T) {
	rule, seen := reflect.TypeFor[cloth.Rule](), 0
	for _, field := range reflect.VisibleFields(reflect.TypeFor[cloth.Cloth]()) {
		if !field.Type.Implements(rule) {
			continue
		}
		seen++
		for _, folder := range []string{".", "../check", "../words"} {
			text, err := os.ReadFile(filepath.Join(folder, strings.ToLower(field.Name)+".go"))
			require.NoError(t, err)
			assert.Contains(t, string(text), "register(", "%s in %s", field.Name, folder)
		}
	}
	assert.GreaterOrEqual(t, seen, 2)
}
