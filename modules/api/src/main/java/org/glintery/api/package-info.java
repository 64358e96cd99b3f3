/**
 * The words every module shares: {@link org.glintery.api.Json}, {@link org.glintery.api.Result},
 * {@link org.glintery.api.Refusal}. A newcomer starts at {@link org.glintery.api.workshop.Workshop}.
 */
package org.glintery.api;
