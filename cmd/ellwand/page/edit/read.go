package edit

import "go.yaml.in/yaml/v3"

// Tree is a text as maps, lists and texts; nil of one that is no YAML.
func Tree(text string) any {
	var tree any
	if err := yaml.Unmarshal([]byte(text), &tree); err != nil {
		return nil
	}
	return texts(tree)
}
